/** The pages of the workshop, in the order in which they are named. */

export const WORKSHOP = ["shelf", "kits", "price", "class", "records"] as const;
export type PageName = (typeof WORKSHOP)[number];

/** A page of the workshop. */
export interface WorkshopPage {
  readonly node: HTMLElement;
  /** Is looked at from now on. */
  readonly enter: () => Promise<void>;
}
