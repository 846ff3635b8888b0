import qrcode from "qrcode-generator";

/**
 * A text as a QR code (ISO/IEC 18004): rows of squares, true where dark, without the quiet border that readers want around it.
 * A quarter of it may be covered and it still reads (level Q).
 */
export function qrSquares(text: string): boolean[][] {
  const code = qrcode(0, "Q");
  code.addData(text);
  code.make();
  const size = code.getModuleCount();
  return Array.from({ length: size }, (_, row) =>
    Array.from({ length: size }, (_, column) => code.isDark(row, column)),
  );
}

/** The quiet border, in squares. */
export const QR_BORDER = 4;

/** A code as a drawing: the size of its side with the border, and the path of all that is dark. */
export type QrDrawing = { readonly size: number; readonly dark: string };

export function qrDrawing(text: string): QrDrawing {
  const squares = qrSquares(text);
  const dark = squares.flatMap((row, y) =>
    row.flatMap((isDark, x) => (isDark ? [`M${x + QR_BORDER} ${y + QR_BORDER}h1v1h-1z`] : [])),
  );
  return { size: squares.length + 2 * QR_BORDER, dark: dark.join("") };
}
