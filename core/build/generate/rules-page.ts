import { rulesPage } from "../../8-report/index.ts";
import type { Product } from "./product.ts";

/** core/8-report/rules.md: every rule id with what it demands. */
export const rulesPageProduct: Product = {
  target: "core/8-report/rules.md",
  needs: ["core/8-report/rules"],
  make: rulesPage,
};
