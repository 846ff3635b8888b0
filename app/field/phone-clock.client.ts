"use client";

/** This moment by the phone's clock, "YYYY-MM-DDThh:mm:ssZ". */
export const momentNow = (): string => `${new Date().toISOString().slice(0, 19)}Z`;

const two = (part: number): string => String(part).padStart(2, "0");

/** A moment as the clock on the phone's wall says it: "YYYY-MM-DDThh:mm". */
export function onTheWall(moment: string): string {
  const at = new Date(moment);
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}T${two(at.getHours())}:${two(at.getMinutes())}`;
}
