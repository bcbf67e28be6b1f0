/** Light or dark: as the system says, unless the maker says otherwise. */

import { Signal } from "../state/signal.ts";

export type Light = "light" | "dark";

const KEY = "stavewright-light";
const system = matchMedia("(prefers-color-scheme: dark)");

/** The light that the page is in. */
export const light = new Signal<Light>(wanted());

function wanted(): Light {
  const own = localStorage.getItem(KEY);
  if (own === "light" || own === "dark") return own;
  return system.matches ? "dark" : "light";
}

export function keepLight(): void {
  const apply = (): void => {
    document.documentElement.dataset["light"] = wanted();
    light.set(wanted());
  };
  system.addEventListener("change", apply);
  apply();
}

export function switchLight(): void {
  const next: Light = light.value === "dark" ? "light" : "dark";
  const own = next === (system.matches ? "dark" : "light") ? null : next;
  if (own === null) localStorage.removeItem(KEY);
  else localStorage.setItem(KEY, own);
  document.documentElement.dataset["light"] = next;
  light.set(next);
}
