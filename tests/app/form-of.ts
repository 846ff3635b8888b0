/** What a page's form sends: each field under its name. */
export function formOf(fields: Readonly<Record<string, string>>): FormData {
  const form = new FormData();
  for (const [name, typed] of Object.entries(fields)) form.set(name, typed);
  return form;
}
