/** The field and the number or letter in a bed's name: "Long Field 3" is bed 3 of Long Field. */
export function fieldOf(name: string): { field: string; sign: string } {
  const [, field = "", sign = name] = /^(.*\D)\s*(\d+\w?)$/.exec(name) ?? [];
  return { field: field.trim() || "Beds", sign };
}
