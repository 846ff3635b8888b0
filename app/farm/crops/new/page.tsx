import type { Metadata } from "next";
import { loadFarm } from "../../../load";
import { CropForm } from "../crop-form";

export const metadata: Metadata = { title: "New crop" };

/** A crop of the farm's own. */
export default function NewCropPage() {
  return (
    <>
      <p className="crumb">
        <a href="/farm/crops">Crops</a>
      </p>
      <h1>New crop</h1>
      <p>Add its varieties and a bloom curve on the page that opens when it is saved.</p>
      <CropForm farm={loadFarm().farm} />
    </>
  );
}
