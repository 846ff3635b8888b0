"use server";

import { revalidatePath } from "next/cache";
import { farmFile } from "../load";

/** Writes the farm's file to its place again after it was deleted while the tool had it open. */
export async function putFileBack(): Promise<void> {
  farmFile().putBack();
  revalidatePath("/", "layout");
}
