/** The control that suits a field. */

import type { Field } from "../api/types.ts";
import { chartControl } from "./chart-control.ts";
import { wordControl } from "./choice-control.ts";
import type { FormContext } from "./context.ts";
import type { Control } from "./control.ts";
import { flagControl } from "./flag-control.ts";
import { materialsControl } from "./materials-control.ts";
import { stockControl } from "./stock-control.ts";
import { textControl } from "./text-control.ts";
import { wordsControl } from "./words-control.ts";

export function controlFor(field: Field, context: FormContext): Control {
  switch (field.kind) {
    case "word":
      return wordControl(field, context);
    case "material":
      return stockControl(field, context);
    case "materials":
      return materialsControl(field, context);
    case "chart":
      return chartControl(field, context);
    case "words":
      return wordsControl(field, context);
    case "flag":
    case "part":
      return flagControl(field, context);
    default:
      return textControl(field, context);
  }
}
