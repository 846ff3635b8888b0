/** Whom the door tells apart. The owner may all. */
export type Role = "owner" | "helper" | "designer" | "stranger";
/** Who may do something, beside the owner. */
export type Beside = readonly Exclude<Role, "owner">[];

export const OWNER_ALONE: Beside = [];
export const HELPER: Beside = ["helper"];
export const DESIGNER: Beside = ["designer"];
export const SIGNED_IN: Beside = ["helper", "designer"];
export const EVERYBODY: Beside = ["helper", "designer", "stranger"];
