/** The pattern, of those that name routes, which a path falls under; null when it falls under none. A name that stands as it is goes before one in brackets. */
export function patternOf(path: string, routes: Readonly<Record<string, unknown>>): string | null {
  if (Object.hasOwn(routes, path)) return path;
  const steps = path.split("/");
  const isUnder = (pattern: string) => {
    const parts = pattern.split("/");
    return (
      parts.length === steps.length &&
      parts.every((part, index) => part === steps[index] || (part.startsWith("[") && steps[index] !== ""))
    );
  };
  return Object.keys(routes).find(isUnder) ?? null;
}
