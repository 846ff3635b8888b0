import jsQR from "jsqr";
import { expect, test } from "vitest";
import { seededRandom, wholeBetween } from "#lib/maths/random";
import { QR_BORDER, qrDrawing, qrSquares } from "../../../app/people/qr-squares";

/** A picture of a code, four points a square, in red, green, blue and how opaque. */
function picture(squares: readonly (readonly boolean[])[]): [Uint8ClampedArray, number] {
  const side = 4 * (squares.length + 2 * QR_BORDER);
  const points = new Uint8ClampedArray(side * side * 4).fill(255);
  for (let y = 0; y < side; y++)
    for (let x = 0; x < side; x++)
      if (squares[Math.floor(y / 4) - QR_BORDER]?.[Math.floor(x / 4) - QR_BORDER])
        points.fill(0, 4 * (y * side + x), 4 * (y * side + x) + 3);
  return [points, side];
}

/** The other library only reads: jsQR 1.4.0, https://github.com/cozmo/jsQR. */
test("a link is read back from its code by another library, letter by letter, over many links", () => {
  for (let seed = 1; seed <= 40; seed++) {
    const random = seededRandom(seed);
    const code = Array.from({ length: 43 }, () => "aZ09-_"[wholeBetween(random, 0, 5)]).join("");
    const link = `http://192.168.${wholeBetween(random, 0, 255)}.${wholeBetween(random, 1, 254)}:3100/join/${code}`;
    const [points, side] = picture(qrSquares(link));
    expect(jsQR(points, side, side)?.data).toBe(link);
  }
});

test("the drawing is dark where the code is, and has its quiet border", () => {
  const squares = qrSquares("http://127.0.0.2:3100");
  const { size, dark } = qrDrawing("http://127.0.0.2:3100");
  expect(size).toBe(squares.length + 8);
  const drawn = new Set([...dark.matchAll(/M(\d+) (\d+)/g)].map(([, x, y]) => `${x} ${y}`));
  expect(drawn.size).toBe(squares.flat().filter(Boolean).length);
  squares.forEach((row, y) => {
    row.forEach((isDark, x) => {
      expect(drawn.has(`${x + 4} ${y + 4}`)).toBe(isDark);
    });
  });
});
