/** Making elements without any HTML in strings. */

export type Child = Node | string | null | undefined | false;

/** Attributes by name; a function listens to the event named behind `on`. */
export type Properties = Record<string, string | number | boolean | null | undefined | ((event: never) => void)>;

function furnish(element: Element, properties: Properties, children: readonly Child[]): void {
  for (const [name, value] of Object.entries(properties)) {
    if (typeof value === "function") {
      element.addEventListener(name.slice(2), value as EventListener);
    } else {
      attribute(element, name, value);
    }
  }
  append(element, children);
}

/** Sets an attribute, or takes it away; `true` stands for an empty one. */
export function attribute(
  element: Element,
  name: string,
  value: string | number | boolean | null | undefined,
): void {
  const text = value === true && !name.startsWith("aria-") ? "" : value;
  if (text === null || text === undefined || (text === false && !name.startsWith("aria-"))) {
    element.removeAttribute(name);
  } else if (element.getAttribute(name) !== String(text)) {
    element.setAttribute(name, String(text));
  }
}

function append(element: Element, children: readonly Child[]): void {
  for (const child of children) {
    if (child !== null && child !== undefined && child !== false) element.append(child);
  }
}

/** An HTML element. */
export function el<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  properties: Properties = {},
  ...children: Child[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  furnish(element, properties, children);
  return element;
}

/** An SVG element. */
export function svg<K extends keyof SVGElementTagNameMap>(
  tag: K,
  properties: Properties = {},
  ...children: Child[]
): SVGElementTagNameMap[K] {
  const element = document.createElementNS("http://www.w3.org/2000/svg", tag);
  furnish(element, properties, children);
  return element;
}

/** Replaces what an element holds. */
export function fill(element: Element, ...children: Child[]): void {
  element.replaceChildren();
  append(element, children);
}

/** Replaces an element's text if it differs, so that a screen reader is not told twice. */
export function say(element: Element, text: string): void {
  if (element.textContent !== text) element.textContent = text;
}
