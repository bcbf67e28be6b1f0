/** Taking away: the packet, its single sheets, solids, and the printer. */

import type { Packet, PaperWord, SolidFormat } from "../api/types.ts";
import { attribute, el, fill, say } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import { Gone, Refusal, bytes } from "../server/client.ts";
import { Job } from "../server/job.ts";
import { fileName, openDialog } from "../shell/dialog.ts";
import type { Bench } from "../state/bench.ts";
import { find, language, number, t } from "../words/texts.ts";

/** The file that holds all others. */
const ALL = "packet.zip";
const SOLIDS: readonly (readonly [SolidFormat, string])[] = [
  ["stl", "model/stl"],
  ["3mf", "model/3mf"],
  ["glb", "model/gltf-binary"],
];

/** Opens the dialog. */
export function openPacket(bench: Bench): void {
  new TakeAway(bench).open();
}

class TakeAway {
  readonly #paper = el("select", { id: newId("paper") });
  readonly #make: HTMLButtonElement;
  readonly #stop: HTMLButtonElement;
  readonly #bar = el("progress", { max: 1, value: 0 });
  readonly #told = el("p", { role: "status" });
  readonly #files = el("ul", { class: "shelf" });
  readonly #solids = el("div", { class: "row wrap" });
  readonly #job = new Job();

  constructor(private readonly bench: Bench) {
    for (const paper of ["letter", "a4"] satisfies PaperWord[]) {
      this.#paper.append(el("option", { value: paper }, t(`bench-paper-${paper}`)));
    }
    this.#paper.value = bench.shown.value?.units === "mm" ? "a4" : "letter";
    this.#make = el("button", { type: "button", onclick: () => void this.#work() }, t("bench-packet-make"));
    this.#stop = el("button", { type: "button", class: "quiet", onclick: () => void this.#halt() }, t("bench-packet-stop"));
    attribute(this.#bar, "aria-label", t("bench-packet-progress"));
    this.#bar.hidden = true;
    this.#stop.hidden = true;
    fill(this.#solids, ...SOLIDS.map(([format, media]) => this.#solid(format, media)));
  }

  open(): void {
    const dialog = openDialog(
      t("bench-take-away"),
      "wide",
      el("p", { class: "hint" }, t("bench-packet-text")),
      el("div", { class: "row wrap" }, el("label", { for: this.#paper.id }, t("bench-paper")), this.#paper, this.#make, this.#stop),
      this.#bar,
      this.#told,
      this.#files,
      el("h3", {}, t("bench-solids")),
      this.#solids,
    );
    dialog.addEventListener("close", () => void this.#halt());
  }

  async #work(): Promise<void> {
    fill(this.#files);
    this.#busy(true);
    try {
      const body = { source: this.bench.document.value.source, paper: this.#paper.value, language: language() };
      const packet = await this.#job.run("/api/packets", body, (news) => this.#progress(news));
      if (packet !== undefined) this.#end(packet);
    } catch (error) {
      this.#fail(error);
    }
  }

  #progress({ done, total, now }: Packet): void {
    attribute(this.#bar, "max", Math.max(1, total));
    attribute(this.#bar, "value", done);
    say(this.#told, t("bench-packet-now", { done, total, now: now ?? "" }));
  }

  #end(packet: Packet): void {
    this.#busy(false);
    if (packet.state === "done") this.#offer(packet);
    else if (packet.state === "failed") say(this.#told, packet.fault ?? t("bench-packet-failed"));
    else say(this.#told, t("bench-packet-stopped"));
  }

  #offer(packet: Packet): void {
    say(this.#told, t("bench-packet-done", { count: packet.files.length }));
    const base = `/api/packets/${packet.id}/`;
    const name = fileName(this.bench.shown.value?.title ?? "");
    const zip = el("a", { href: base + ALL, download: `${name}.zip`, class: "button" }, t("bench-packet-zip"));
    const rows = packet.files.filter(({ name: own }) => own !== ALL).map((file) => {
      const look = /^(application\/pdf$|text\/html|image\/)/.test(file.media);
      return el(
        "li",
        { class: "file" },
        el("a", { href: base + file.name, download: `${name}-${file.name}` }, file.name),
        el("span", {}, find(`bench-file-${file.name.replace(/\.\w+$/, "")}`) ?? ""),
        el("span", { class: "fact" }, t("bench-kilobytes", { size: number(file.bytes / 1000, file.bytes < 10_000 ? 1 : 0) })),
        look && el("a", { href: base + file.name, target: "_blank", rel: "noopener" }, t("bench-packet-print")),
      );
    });
    fill(this.#files, el("li", {}, zip), ...rows);
    zip.focus();
  }

  async #halt(): Promise<void> {
    if (this.#stop.hidden) return;
    this.#busy(false);
    say(this.#told, t("bench-packet-stopped"));
    try {
      await this.#job.stop();
    } catch (error) {
      this.#fail(error);
    }
  }

  #busy(busy: boolean): void {
    this.#make.disabled = busy;
    this.#stop.hidden = !busy;
    this.#bar.hidden = !busy;
  }

  #fail(error: unknown): void {
    this.#busy(false);
    if (error instanceof Gone) {
      this.bench.onGone();
      say(this.#told, t("bench-gone"));
    } else if (error instanceof Refusal) {
      say(this.#told, [error.fault.what, error.fault.how_to_mend].filter(Boolean).join(" "));
    } else throw error;
  }

  #solid(format: SolidFormat, media: string): HTMLElement {
    const fetchSolid = async (): Promise<void> => {
      try {
        const body = { source: this.bench.document.value.source, detail: "full", format };
        const url = URL.createObjectURL(new Blob([await bytes("/api/picture", body)], { type: media }));
        el("a", { href: url, download: `${fileName(this.bench.shown.value?.title ?? "")}.${format}` }).click();
        setTimeout(() => URL.revokeObjectURL(url), 10_000);
      } catch (error) {
        this.#fail(error);
      }
    };
    return el("button", { type: "button", class: "quiet", onclick: () => void fetchSolid() }, t(`bench-solid-${format}`));
  }
}
