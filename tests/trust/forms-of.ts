/** A form as a page shows it: where it goes, and its fields with what stands in them. */
export type PageForm = { readonly path: string; readonly fields: readonly (readonly [string, string])[] };

/** The forms of a page that the browser would send by itself, before scripts arrive: each with the hidden fields that name its action. */
export function formsOf(path: string, html: string): PageForm[] {
  return [...html.matchAll(/<form\b[^>]*>([\s\S]*?)<\/form>/g)]
    .map(([, inside = ""]) => ({ path, fields: fieldsOf(inside) }))
    .filter(({ fields }) => fields.some(([name]) => name.startsWith("$ACTION")));
}

function fieldsOf(html: string): [string, string][] {
  const tags = [
    ...html.matchAll(
      /<(input|select|textarea|button)\b([^>]*)>([\s\S]*?)(?=<(?:input|select|textarea|button|\/form)\b|$)/g,
    ),
  ];
  return tags.flatMap(([, , attributes = "", after = ""]) => {
    const name = attribute(attributes, "name");
    if (name === null) return [];
    const chosen = /<option\b([^>]*\bselected\b[^>]*)>/.exec(after)?.[1] ?? /<option\b([^>]*)>/.exec(after)?.[1];
    return [[name, attribute(attributes, "value") ?? attribute(chosen ?? "", "value") ?? ""]];
  });
}

function attribute(tag: string, name: string): string | null {
  const text = new RegExp(`(?:^|\\s)${name}="([^"]*)"`).exec(tag)?.[1];
  return text === undefined ? null : plain(text);
}

/** What the five marks stand for that HTML must write otherwise. */
const plain = (text: string): string =>
  text
    .replaceAll("&quot;", '"')
    .replaceAll("&#x27;", "'")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&amp;", "&");
