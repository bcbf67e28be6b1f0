/** A page that works on a plan: its file, its form, what it comes to, its sheets. */

import type { Packet, PlanName, PlanShown } from "../api/types.ts";
import { attribute, el, fill, say, type Child } from "../dom/element.ts";
import { newId } from "../form/context.ts";
import { Refusal } from "../server/client.ts";
import { askName, type Outcome } from "../shell/ask-name.ts";
import { choose, fileName } from "../shell/dialog.ts";
import { number, t } from "../words/texts.ts";
import type { Desk } from "./desk.ts";
import { leafOf } from "./leaf.ts";
import type { WorkshopPage } from "./pages.ts";
import type { Sheet } from "./paper.ts";
import { trouble } from "./trouble.ts";
import { textAt } from "./values.ts";

const CONFLICT = 409;
/** How long a search may take, in seconds. */
const SECONDS = [5, 15, 60, 240];

export interface PlanView {
  readonly heading: string;
  /** The fields of the plan. */
  readonly form: (sheet: Sheet) => readonly HTMLElement[];
  /** Which leaves are shown, in which order. */
  readonly leaves: readonly string[];
  /** Whether sections with a table are folded. */
  readonly folded?: boolean;
  /** What stands before the leaves. */
  readonly first?: (shown: PlanShown) => readonly Child[];
  /** Whether it is a search: how long it may take is asked, and stopped it answers with its best so far. */
  readonly searches?: boolean;
  /** What must be known before the form can be made. */
  readonly ready: () => Promise<void>;
  /** What is chosen for the sheets, beside the button that sets them. */
  readonly sheets?: readonly HTMLElement[];
}

export class PlanPage implements WorkshopPage {
  readonly node = el("div", { class: "shop-body" });
  readonly #files = el("select", { id: newId("plan"), onchange: () => void this.#open() });
  readonly #save = el("button", { type: "button", onclick: () => void this.#attempt(() => this.#keep()) }, t("bench-save"));
  readonly #undo = el("button", { type: "button", class: "quiet", onclick: () => void this.#attempt(() => this.desk.paper.undo()) });
  readonly #redo = el("button", { type: "button", class: "quiet", onclick: () => void this.#attempt(() => this.desk.paper.redo()) });
  readonly #form = el("form", { class: "plan-form", autocomplete: "off", onsubmit: (event: SubmitEvent) => event.preventDefault() });
  readonly #wrong = el("div", { role: "alert" });
  readonly #told = el("p", { class: "hint", role: "status" });
  readonly #bar = el("progress", { "aria-label": t("bench-plan-working"), hidden: true });
  readonly #stop = el("button", { type: "button", class: "quiet", hidden: true, onclick: () => void this.#attempt(() => (this.view.searches ? this.desk.enough() : this.desk.stop())) });
  readonly #sheets = el("div", { class: "stack" });
  readonly #leaves = el("div", { class: "leaves" });
  readonly #text = el("textarea", { id: newId("text"), rows: 16, spellcheck: "false" });

  constructor(
    private readonly desk: Desk,
    private readonly view: PlanView,
  ) {
    say(this.#stop, t(view.searches ? "bench-class-enough" : "bench-packet-stop"));
    const take = (): Promise<void> => desk.paper.replace(this.#text.value, t("bench-did-text"));
    const text = el(
      "details",
      { class: "rest" },
      el("summary", {}, t("bench-plan-text")),
      el("label", { for: this.#text.id, class: "unseen" }, t("bench-plan-text")),
      this.#text,
      el("button", { type: "button", class: "quiet", onclick: () => void this.#attempt(take) }, t("bench-plan-text-take")),
    );
    const make = el("button", { type: "button", class: "quiet", onclick: () => void this.#attempt(() => this.#set()) }, t("bench-plan-sheets"));
    fill(
      this.node,
      el("h1", {}, view.heading),
      el(
        "div",
        { class: "row wrap" },
        el("label", { for: this.#files.id }, t("bench-plan-file")),
        this.#files,
        this.#save,
        el("button", { type: "button", class: "quiet", onclick: () => void this.#attempt(() => this.#keepAs()) }, t("bench-save-as")),
        this.#undo,
        this.#redo,
      ),
      el(
        "div",
        { class: "plan" },
        el("section", { class: "stack", "aria-label": t("bench-plan-form") }, this.#form, text),
        el(
          "section",
          { class: "stack", "aria-label": t("bench-plan-comes-to") },
          this.#wrong,
          el("div", { class: "row wrap" }, make, ...(view.searches ? this.#limit() : []), ...(view.sheets ?? []), this.#bar, this.#stop),
          this.#told,
          this.#sheets,
          this.#leaves,
        ),
      ),
    );
    desk.paper.sheet.listen((sheet) => sheet && this.#show(sheet));
    desk.shown.listen(() => this.#showLeaves());
    desk.progress.listen((packet) => this.#showProgress(packet));
    desk.fault.listen((fault) => this.#complain(fault === "" ? [] : [fault]));
    document.addEventListener("keydown", (event) => this.#press(event));
  }

  enter = async (): Promise<void> => {
    await this.view.ready();
    await this.desk.start();
    await this.#list();
    const sheet = this.desk.paper.sheet.value;
    if (sheet) this.#show(sheet);
    this.#showLeaves();
  };

  /** How long the search may take. */
  #limit(): HTMLElement[] {
    const options = SECONDS.map((seconds) => el("option", { value: seconds }, t("bench-class-seconds-of", { seconds })));
    const select = el("select", { id: newId("seconds") }, ...options);
    select.value = String(this.desk.seconds);
    select.addEventListener("change", () => {
      this.desk.seconds = Number(select.value);
      void this.#attempt(() => this.desk.work(true));
    });
    return [el("label", { for: select.id }, t("bench-class-seconds")), select];
  }

  #show(sheet: Sheet): void {
    const { undoable, redoable, unsaved } = this.desk.paper;
    say(this.#undo, undoable === undefined ? t("bench-undo") : t("bench-undo-step", { step: undoable }));
    say(this.#redo, redoable === undefined ? t("bench-redo") : t("bench-redo-step", { step: redoable }));
    attribute(this.#undo, "disabled", undoable === undefined);
    attribute(this.#redo, "disabled", redoable === undefined);
    attribute(this.#save, "disabled", !unsaved);
    renew(this.#form, this.view.form(sheet));
    if (this.#text !== document.activeElement) this.#text.value = sheet.source;
    this.#complain(sheet.problems.map(({ message, help, line, column }) => [t("bench-plan-problem", { line, column }), message, help].filter(Boolean).join(" ")));
  }

  #complain(lines: readonly string[]): void {
    fill(this.#wrong, ...lines.map((line) => el("p", { class: "wrong" }, line)));
  }

  #showLeaves(): void {
    const shown = this.desk.shown.value;
    if (!shown) return;
    const leaves = this.view.leaves.flatMap((id) => shown.leaves.filter((leaf) => leaf.id === id));
    fill(this.#sheets);
    fill(this.#leaves, ...(this.view.first?.(shown) ?? []), ...leaves.map((leaf) => leafOf(leaf, this.view.folded)));
    say(this.#told, t("bench-plan-worked"));
  }

  #showProgress(packet: Packet | undefined): void {
    attribute(this.#bar, "hidden", packet === undefined);
    attribute(this.#stop, "hidden", packet === undefined);
    attribute(this.#leaves, "aria-busy", packet === undefined ? null : "true");
    say(this.#told, packet ? (packet.now ?? t("bench-plan-working")) : "");
  }

  /** The sheets, to save or to print. */
  async #set(): Promise<void> {
    fill(this.#sheets);
    this.#bar.hidden = false;
    const packet = await this.desk.sheets(({ now }) => say(this.#told, t("bench-plan-setting", { now: now ?? "" }))).finally(() => (this.#bar.hidden = true));
    if (!packet) return;
    if (packet.state !== "done") {
      say(this.#told, packet.fault ?? t("bench-packet-failed"));
      return;
    }
    say(this.#told, t("bench-packet-done", { count: packet.files.length }));
    const title = fileName(textAt(this.desk.paper.sheet.value?.values, "title"));
    const rows = packet.files.map(({ name, bytes }) => {
      const size = t("bench-kilobytes", { size: number(bytes / 1000, bytes < 10_000 ? 1 : 0) });
      const place = `/api/packets/${packet.id}/${name}?save`;
      return el("li", { class: "file" }, el("a", { href: place, download: `${title}-${name}` }, name), el("span", { class: "fact" }, size));
    });
    fill(this.#sheets, el("ul", { class: "shelf" }, ...rows));
  }

  async #list(): Promise<void> {
    const plans = await this.desk.paper.list();
    const name = this.desk.paper.sheet.value?.name ?? null;
    const option = (plan: PlanName): HTMLElement => el("option", { value: plan.name }, `${plan.title} (${plan.name}.toml)`);
    fill(this.#files, name === null && el("option", { value: "" }, t("bench-plan-unsaved")), ...plans.map(option), el("option", { value: "+" }, t("bench-plan-new")));
    this.#files.value = name ?? "";
  }

  async #open(): Promise<void> {
    const wanted = this.#files.value;
    const { paper } = this.desk;
    const go = async (): Promise<void> => {
      if (!(await this.#settled())) return;
      await (wanted === "+" ? paper.begin() : paper.open(wanted));
    };
    await this.#attempt(go);
    await this.#attempt(() => this.#list());
  }

  /** Whether another plan may be taken up: nothing is unsaved, or the maker said what becomes of it. */
  async #settled(): Promise<boolean> {
    const { paper } = this.desk;
    if (!paper.unsaved || (paper.sheet.value?.name === null && paper.undoable === undefined)) return true;
    const answer = await choose(t("bench-unsaved-heading"), t("bench-plan-unsaved-text"), [
      ["save", t("bench-save")],
      ["drop", t("bench-unsaved-drop")],
      ["stay", t("bench-unsaved-stay")],
    ]);
    if (answer === "save") return this.#keep();
    return answer === "drop";
  }

  /** Saves; a plan without a name asks for one first. Tells whether it was saved. */
  async #keep(): Promise<boolean> {
    const name = this.desk.paper.sheet.value?.name ?? null;
    if (name === null) return this.#keepAs();
    await this.desk.paper.save(name, false);
    return true;
  }

  async #keepAs(): Promise<boolean> {
    const give = async (name: string, over: boolean): Promise<Outcome> => {
      try {
        await this.desk.paper.save(name, over);
        return "done";
      } catch (error) {
        return error instanceof Refusal && error.status === CONFLICT ? "taken" : { refused: trouble(error) };
      }
    };
    const proposed = fileName(textAt(this.desk.paper.sheet.value?.values, "title"));
    const kept = await askName({ heading: t("bench-plan-save-heading"), button: t("bench-save"), proposed, give });
    if (kept) await this.#list();
    return kept;
  }

  async #attempt(act: () => Promise<unknown>): Promise<void> {
    await this.desk.frame.attempt(async () => void (await act()));
  }

  #press(event: KeyboardEvent): void {
    if (!(event.ctrlKey || event.metaKey) || !this.node.isConnected || document.querySelector("dialog[open]")) return;
    const typing = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
    const { paper } = this.desk;
    const acts: Record<string, (() => Promise<unknown>) | undefined> = {
      s: () => this.#keep(),
      z: typing ? undefined : () => (event.shiftKey ? paper.redo() : paper.undo()),
      y: typing ? undefined : () => paper.redo(),
    };
    const act = acts[event.key.toLowerCase()];
    if (!act) return;
    event.preventDefault();
    void this.#attempt(act);
  }
}

/** Puts new fields in the place of the old; the focus and what is being typed stay. */
function renew(form: HTMLElement, rows: readonly HTMLElement[]): void {
  const held = document.activeElement;
  const inside = held instanceof HTMLElement && form.contains(held) ? held : undefined;
  const typed = inside instanceof HTMLInputElement && inside.type === "text" ? [inside.value, inside.selectionStart, inside.defaultValue] as const : undefined;
  fill(form, ...rows);
  const next = inside && document.getElementById(inside.id);
  if (!next || !form.contains(next)) return;
  next.focus();
  if (typed && next instanceof HTMLInputElement && typed[0] !== typed[2]) {
    next.value = typed[0];
    next.setSelectionRange(typed[1], typed[1]);
  }
}
