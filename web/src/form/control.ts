/** A control of the form. */

import type { Field } from "../api/types.ts";

export interface Control {
  /** What takes the focus and the label. */
  readonly input: HTMLElement;
  readonly node: HTMLElement;
  show(field: Field): void;
}
