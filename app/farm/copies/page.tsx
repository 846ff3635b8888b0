import type { Metadata } from "next";
import { farmCopies } from "../../copies";
import { Form } from "../../ui/form.client";
import { TextField } from "../../ui/form-fields.client";
import { FarmTabs } from "../farm-tabs";
import { saveSecondPlace, takeOne } from "./copy-actions";
import { CopyRows } from "./copy-rows";

export const metadata: Metadata = { title: "Copies" };

/** The copies of the farm: what there is, one more now, one back, and a second place for all of them. */
export default function CopiesPage() {
  const { copies, folder, secondPlace } = farmCopies();
  return (
    <>
      <h1>Farm: copies</h1>
      <FarmTabs open="/farm/copies" />
      <p>
        The tool copies the farm once a day, and before each import, restore or new version. Every copy is checked
        before it counts. The newest ten stay, and the newest of each of the last 7 days, 5 weeks and 12 months; copies
        taken by hand stay until you delete them. They lie in <code>{folder}</code>.
      </p>
      <div className="cols farm-cols">
        <section aria-label="Copies">
          <Form action={takeOne} submit="Take a copy now" label="Take a copy" />
          <CopyRows copies={copies} />
        </section>
        <section aria-labelledby="second-place">
          <h2 id="second-place">A second place</h2>
          <p>
            A disk can fail with all copies on it. Name a folder on a stick, on another disk, or one that is
            synchronised, and each copy goes there too. Copies hold your clients’ names: keep the second place as
            private as the first.
          </p>
          <Form action={saveSecondPlace} submit="Keep copies there too" label="A second place" isQuiet>
            <div className="fields">
              <TextField
                name="folder"
                label="Folder"
                hint="The whole way to it. Leave it empty for none."
                value={secondPlace ?? ""}
                isWide
              />
            </div>
          </Form>
        </section>
      </div>
    </>
  );
}
