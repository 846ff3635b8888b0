/** A table as a CSV file of that name. The byte order mark tells spreadsheets that it is UTF-8. */
export const csvFile = (text: string, name: string): Response =>
  new Response(`\uFEFF${text}`, {
    headers: { "content-type": "text/csv; charset=utf-8", "content-disposition": `attachment; filename="${name}"` },
  });
