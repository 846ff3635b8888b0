import type { QrDrawing } from "../../people/qr-squares";

/** A new code as a link and as a drawing for a phone's camera, shown once; null before one was made, or when none could be. */
export type CodeState = { readonly link: string; readonly drawing: QrDrawing } | null;
