import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { CATALOGUE } from "#lib/domain/catalogue/crops";
import { CROP_NUMBERS } from "#lib/domain/records/crop";
import { Cautions } from "../../../frame/cautions";
import { loadFarm } from "../../../load";
import { Form } from "../../../ui/form.client";
import { deleteCrop, restoreCrop } from "../crop-actions";
import { CropForm } from "../crop-form";
import { CurveList } from "../curve-list";
import { VarietyRows } from "../variety-rows";

type Props = { params: Promise<{ id: string }> };

const findCrop = async ({ params }: Props) => {
  const { id } = await params;
  return loadFarm().crops.find((crop) => String(crop.id) === id);
};

export async function generateMetadata(props: Props): Promise<Metadata> {
  return { title: (await findCrop(props))?.name ?? "No such crop" };
}

/** One crop: its numbers with their marks, its varieties and its bloom curves. */
export default async function CropPage(props: Props) {
  const crop = await findCrop(props);
  if (!crop) notFound();
  const { farm, varieties, curves } = loadFarm();
  const ofCrop = varieties.filter(({ cropId }) => cropId === crop.id);
  const isBuiltIn = CATALOGUE.some(({ name }) => name === crop.name);
  const isChanged = Object.keys(CROP_NUMBERS).some((name) => crop[name as keyof typeof CROP_NUMBERS].mark === "own");
  return (
    <>
      <p className="crumb">
        <a href="/farm/crops">Crops</a>
      </p>
      <h1>{crop.name}</h1>
      {crop.scientific && (
        <p className="soft">
          <i>{crop.scientific}</i>
        </p>
      )}
      <Cautions crops={[crop]} />
      <div className="cols farm-cols">
        <div>
          <CropForm crop={crop} farm={farm} />
          {isBuiltIn && isChanged && (
            <Form
              action={restoreCrop}
              submit="Back to the built-in numbers"
              hidden={{ cropId: crop.id }}
              label="Back to the built-in numbers"
              isQuiet
            />
          )}
        </div>
        <div>
          <VarietyRows crop={crop} varieties={ofCrop} manner={farm} />
          <CurveList
            crop={crop}
            curves={curves.filter(({ cropId }) => cropId === crop.id)}
            varieties={ofCrop}
            manner={farm}
          />
        </div>
      </div>
      <h2 className="no-print">Remove</h2>
      <Form
        action={deleteCrop}
        submit={`Remove ${crop.name}`}
        hidden={{ cropId: crop.id }}
        label={`Remove ${crop.name}`}
        beside={<span className="hint">Only while no variety and no booking names it. Can be undone.</span>}
        isQuiet
      />
    </>
  );
}
