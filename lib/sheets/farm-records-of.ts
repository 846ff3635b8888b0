import type { CurveRecord, FarmRecords, PlantingName, VarietyNamed } from "#lib/domain/farm-records";
import type { Bed } from "#lib/domain/records/bed";
import type { Booking } from "#lib/domain/records/booking";
import type { Crop } from "#lib/domain/records/crop";
import type { Planting } from "#lib/domain/records/planting";
import type { Variety } from "#lib/domain/records/variety";
import { recordedDays } from "#lib/domain/records/weather-day";
import { ById, type Snapshot } from "#lib/domain/snapshot";

const withoutId = <T extends { readonly id: number }>({ id: _id, ...rest }: T): Omit<T, "id"> => rest;

/** A farm's snapshot by name: what the sheets say. Every list stands in the order of the snapshot. */
export function farmRecordsOf(snapshot: Snapshot): Required<FarmRecords> {
  const crops = new ById("crop", snapshot.crops);
  const varieties = new ById("variety", snapshot.varieties);
  const beds = new ById("bed", snapshot.beds);
  const plantings = new ById("planting", snapshot.plantings);
  const recipes = new ById("recipe", snapshot.recipes);
  const bookings = new ById("booking", snapshot.bookings);
  const namesOf = (varietyId: number): VarietyNamed => {
    const { cropId, name, colour } = varieties.get(varietyId);
    return { crop: crops.get(cropId).name, variety: name, colour };
  };
  const namingCrop = <Line extends { cropId: number | null }>({ cropId, ...line }: Line) => ({
    ...line,
    crop: cropId === null ? null : crops.get(cropId).name,
  });
  const ofCrop = cropNamer(crops, varieties);
  const whose = (bookingId: number | null) =>
    bookingId === null ? FOR_NOBODY : nameOfBooking(bookings.get(bookingId));
  /** A row under the names of its variety and of its booking. */
  const named = <Row extends ForBooking>({ id: _id, varietyId, bookingId, ...row }: Row) => ({
    ...row,
    ...namesOf(varietyId),
    ...whose(bookingId),
  });
  /** A row under the names of its bed and of its variety. */
  const inPlace = <Row extends InBed>({ id: _id, bedId, varietyId, ...row }: Row) => ({
    ...row,
    ...namesOf(varietyId),
    bed: beds.get(bedId).name,
  });
  return {
    farm: snapshot.farm,
    crops: snapshot.crops.map(withoutId),
    curves: snapshot.curves.map(
      ({ plantingId, ...curve }): CurveRecord => ({
        ...ofCrop(curve),
        ...(plantingId === null ? {} : { planting: nameOfPlanting(plantings.get(plantingId), beds) }),
      }),
    ),
    recipes: snapshot.recipes.map(withoutId),
    varieties: snapshot.varieties.map(({ id, cropId: _crop, name: _name, colour: _colour, ...own }) => ({
      ...namesOf(id),
      ...own,
    })),
    beds: snapshot.beds.map(withoutId),
    plantings: snapshot.plantings.map(({ id: _id, bedId, varietyId, ...planting }) => ({
      ...planting,
      ...namesOf(varietyId),
      bed: beds.get(bedId).name,
    })),
    bookings: snapshot.bookings.map(({ id: _id, unacceptableCropIds, pieces, stemLines, promises, ...booking }) => ({
      ...booking,
      unacceptableCrops: unacceptableCropIds.map((id) => crops.get(id).name),
      pieces: pieces.map(({ recipeId, ...piece }) => ({ ...piece, recipe: recipes.get(recipeId).name })),
      stemLines: stemLines.map(namingCrop),
      promises: promises.map(namingCrop),
    })),
    coolerStock: snapshot.coolerStock.map(({ id: _id, varietyId, ...stock }) => ({ ...stock, ...namesOf(varietyId) })),
    coolerMoves: snapshot.coolerMoves.map(named),
    purchases: snapshot.purchases.map(named),
    standingOrders: snapshot.standingOrders.map(({ id: _id, recipeId, ...order }) => ({
      ...namingCrop(order),
      recipe: recipeId === null ? null : recipes.get(recipeId).name,
    })),
    cuts: snapshot.cuts.map(({ bedId, ...cut }) => ({ ...named(cut), bed: beds.get(bedId).name })),
    budLooks: snapshot.budLooks.map(inPlace),
    losses: snapshot.losses.map(inPlace),
    firstCuts: snapshot.firstCuts.map(ofCrop),
    reviews: snapshot.reviews.map(({ id: _id, bookingId, ...review }) => ({
      ...review,
      ...nameOfBooking(bookings.get(bookingId)),
    })),
    weather: snapshot.weather ? recordedDays(snapshot.weather) : [],
  };
}

type OfCrop = { readonly id: number; readonly cropId: number; readonly varietyId: number | null };

/** A row under the name of its crop, and of the variety that is meant alone. */
const cropNamer =
  (crops: ById<Crop>, varieties: ById<Variety>) =>
  <Row extends OfCrop>({ id: _id, cropId, varietyId, ...row }: Row) => ({
    ...row,
    crop: crops.get(cropId).name,
    variety: varietyId === null ? null : varieties.get(varietyId).name,
  });

type ForBooking = { readonly id: number; readonly varietyId: number; readonly bookingId: number | null };

type InBed = { readonly id: number; readonly bedId: number; readonly varietyId: number };

const FOR_NOBODY = { client: null, eventOn: null };

const nameOfBooking = ({ client, eventOn }: Booking) => ({ client, eventOn });

const nameOfPlanting = ({ bedId, seasonYear, plantedOn }: Planting, beds: ById<Bed>): PlantingName => ({
  bed: beds.get(bedId).name,
  seasonYear,
  plantedOn,
});
