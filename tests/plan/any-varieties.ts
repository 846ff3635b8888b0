import fc from "fast-check";
import { AS_ITS_CROP } from "#lib/domain/records/variety";
import { HEAD_SIZES, OUT_OF_WATER, type Role, STEM_LENGTHS } from "#lib/domain/words";
import { variety } from "../small-farm";

/** What a variety says of itself: mostly nothing. */
const own = fc.oneof(
  { weight: 3, arbitrary: fc.constant(AS_ITS_CROP) },
  {
    weight: 1,
    arbitrary: fc.record({
      roles: fc.constantFrom<Role[]>([], ["focal", "filler"], ["secondary"]),
      headSize: fc.constantFrom(null, ...HEAD_SIZES),
      stemLength: fc.constantFrom(null, ...STEM_LENGTHS),
      outOfWater: fc.constantFrom(null, ...OUT_OF_WATER),
      holdDays: fc.constantFrom(null, 2, 6.5),
      stretchDays: fc.constantFrom(null, 8),
    }),
  },
);
/** Five varieties of three crops, in four colours. */
export const anyVarieties = fc
  .tuple(own, own, own)
  .map(([ofTwo, ofThree, ofFive]) => [
    variety({ id: 1, cropId: 1, colour: "cream" }),
    variety({ id: 2, cropId: 1, colour: "blush", ...ofTwo }),
    variety({ id: 3, cropId: 2, colour: "cream", ...ofThree }),
    variety({ id: 4, cropId: 2, colour: "plum" }),
    variety({ id: 5, cropId: 3, colour: "white", ...ofFive }),
  ]);
