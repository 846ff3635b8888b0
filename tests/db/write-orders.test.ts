import { expect, test } from "vitest";
import { undoChange } from "#db/journal/journal";
import { removeCrop } from "#db/write/crops";
import { putOrder, removeOrder } from "#db/write/orders";
import { removeRecipe } from "#db/write/recipes";
import type { StandingOrderDraft } from "#lib/domain/records/standing-order";
import { day } from "../small-farm";
import { changeOf, done, kept, refused, withFarm } from "./kept-farm";

const LIST: StandingOrderDraft = {
  buyer: "Invented florist",
  kind: "florist",
  weekday: 5,
  firstOn: day("2027-07-02"),
  lastOn: day("2027-09-24"),
  role: "focal",
  cropId: 2,
  recipeId: null,
  colours: ["blush", "cream"],
  askedCount: 40,
  stemCents: 120,
};

test("a standing order is added, changed and taken out, and an undo brings it back as it was", () => {
  withFarm((database) => {
    const { result: id, title } = done(putOrder(database, LIST));
    expect(title).toBe("added the standing order of Invented florist");
    expect(kept(database).standingOrders).toEqual([{ id, ...LIST }]);
    const pieces = { ...LIST, id, role: null, cropId: null, recipeId: 1, askedCount: 12 };
    expect(done(putOrder(database, pieces)).title).toBe("changed the standing order of Invented florist");
    expect(kept(database).standingOrders).toEqual([pieces]);
    const change = changeOf(removeOrder(database, id));
    expect(kept(database).standingOrders).toEqual([]);
    expect(undoChange(database, change).ok).toBe(true);
    expect(kept(database).standingOrders).toEqual([pieces]);
  });
});

test("an order of a crop, a piece or a row that is not on the farm is refused, and what an order names stays", () => {
  withFarm((database) => {
    expect(refused(putOrder(database, { ...LIST, cropId: 97 }))).toEqual(["cropId: this crop is not on the farm"]);
    expect(refused(putOrder(database, { ...LIST, role: null, recipeId: 97 }))).toEqual([
      "recipeId: this recipe is not on the farm",
    ]);
    expect(refused(putOrder(database, { ...LIST, id: 9 }))).toEqual(["id: this standing order is not on the farm"]);
    expect(refused(removeOrder(database, 9))).toEqual(["id: this standing order is not on the farm"]);
    done(putOrder(database, LIST));
    done(putOrder(database, { ...LIST, role: null, cropId: null, recipeId: 2 }));
    expect(refused(removeCrop(database, 2))[0]).toContain("1 standing order");
    expect(refused(removeRecipe(database, 2))).toEqual([
      "id: Arch is named by 1 standing order: remove or change those first",
    ]);
  });
});
