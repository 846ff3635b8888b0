import type { Recipe } from "#lib/domain/records/recipe";
import { inTenths } from "./numbers";

/** Pieces that come whole are counted whole; what is made by the foot may be a part of one. What is wrong with a count, or null. */
export const halfPieceInWords = (pieceCount: number, { name, unit }: Pick<Recipe, "name" | "unit">): string | null =>
  unit !== "piece" || Number.isInteger(pieceCount)
    ? null
    : `${inTenths(pieceCount)} of ${name.toLowerCase()}: pieces are whole, write ${Math.ceil(pieceCount)}`;
