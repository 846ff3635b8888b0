import type { Snapshot } from "#lib/domain/snapshot";
import type { WhatIf } from "#lib/domain/what-if";
import { Form } from "../../ui/form.client";
import { type BedToggle, bedToggles } from "./bed-toggle";
import { toggleBed } from "./change-actions";

/** Every bed with two futures, and the button that turns it to the other one. */
export function AddBeds({ whatIf, farm, wouldBe }: { whatIf: WhatIf; farm: Snapshot; wouldBe: Snapshot }) {
  const beds = bedToggles(farm, wouldBe, whatIf.seasonYear);
  if (beds.length === 0)
    return (
      <p className="soft">
        No bed of {whatIf.seasonYear} holds a planting that can winter in the ground and has a bloom curve for either
        future.
      </p>
    );
  return (
    <Form action={toggleBed} hidden={{ whatIfId: whatIf.id }} label="Beds kept or dug">
      <ul className="bed-toggles">
        {beds.map((row) => (
          <BedRow key={row.bed.id} row={row} />
        ))}
      </ul>
    </Form>
  );
}

function BedRow({ row: { bed, growing, isKeptNow, wouldBeKept, forbidden } }: { row: BedToggle }) {
  const isChanged = isKeptNow !== wouldBeKept;
  return (
    <li className={isChanged ? "changed" : undefined}>
      <span>
        <span className="bed-tag">{bed.name}</span> {wouldBeKept ? "kept in the ground" : "dug"}
        {isChanged && <span className="tag">supposed</span>}
        <span className="soft small"> {growing.join(", ")}</span>
        {forbidden.length > 0 && <span className="short-word small"> Better dug: {forbidden.join("; ")}.</span>}
      </span>
      <button type="submit" name="bed" value={`${bed.id} ${wouldBeKept ? "dug" : "kept"}`}>
        {wouldBeKept ? "Dig it" : "Keep it"}
        <span className="visually-hidden">, bed {bed.name}</span>
      </button>
    </li>
  );
}
