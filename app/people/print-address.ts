import { QR_BORDER, qrSquares } from "./qr-squares";

/** Says in the window of the server where the farm is open, with the code that a phone's camera reads. */
export function printAddress(address: string): void {
  const isPlain = address.startsWith("http:");
  console.log(`
  Stems & Saturdays is open to the farm's people at ${address}
${inBlocks(qrSquares(address))}
  Sign in with the owner's password; helpers and designers join under Farm, People.
${isPlain ? PLAIN : ""}  Leave this window open; Ctrl+C closes it.
`);
}

const PLAIN = `
  Nothing is encrypted on the way: whoever is on the same network with the right tools can read what is sent, the password too, and act in
  your name. Use it on a network of your own with its own password, never on a guests' or a market's. With a certificate of your
  own: --cert FILE --key FILE.

`;

/** Two squares a letter, one above the other, light on dark: windows of this kind are dark, and readers take the inverse for the same. */
function inBlocks(squares: readonly (readonly boolean[])[]): string {
  const size = squares.length + 2 * QR_BORDER;
  const isLight = (row: number, column: number) => !(squares[row - QR_BORDER]?.[column - QR_BORDER] ?? false);
  const lines: string[] = [];
  for (let row = 0; row < size; row += 2)
    lines.push(
      `  ${Array.from({ length: size }, (_, column) => BLOCKS[Number(isLight(row, column)) + 2 * Number(row + 1 < size && isLight(row + 1, column))]).join("")}`,
    );
  return lines.join("\n");
}

/** Nothing, the upper half, the lower half, all of it light. */
const BLOCKS = [" ", "▀", "▄", "█"];
