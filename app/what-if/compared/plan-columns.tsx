import type { ReactNode } from "react";
import type { Column } from "../../ui/table";
import { Difference, type Sense } from "./difference-words";

/** A plan among others: a what-if by its id and name, or the farm as it stands. */
export type ComparedPlan = { readonly id: number; readonly name: string };

export const AS_IT_STANDS: ComparedPlan = { id: 0, name: "As it stands" };

/** A column for each plan: what stands in it, and beneath how far it is from the first where that can be said. */
export const planColumns = <Row,>(
  plans: readonly ComparedPlan[],
  cell: (row: Row, index: number) => ReactNode,
  apart: (row: Row, index: number) => { readonly difference: number; readonly sense: Sense } | null,
): readonly Column<Row>[] =>
  plans.map(({ name }, index) => ({
    head: name,
    kind: "number",
    cell: (row) => {
      const from = index === 0 ? null : apart(row, index);
      return (
        <>
          {cell(row, index)}
          {from && (
            <>
              {" "}
              <span className="beneath">
                <Difference {...from} />
              </span>
            </>
          )}
        </>
      );
    },
  }));
