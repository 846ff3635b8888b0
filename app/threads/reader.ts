/** The header (the door drops those that begin with x-) in which a page says which page it is, so that the readers of the farm take turns with long work. */
export const READER_HEADER = "page-name";

/** The page that asks; one name for all that do not say. */
export const readerOf = (request: Request): string => (request.headers.get(READER_HEADER) ?? "").slice(0, 40);
