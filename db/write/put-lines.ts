/** How lines of one table are written; `position` counts from 0. */
export type LineWriter<Line> = {
  change(id: number, line: Line, position: number): void;
  add(line: Line, position: number): void;
  remove(id: number): void;
};

/**
 * Makes the lines of a booking or recipe these, in this order. `ids` are the lines it has now, in order. Lines keep their rows where they can,
 * so that saving without a change touches nothing in the journal.
 */
export function putLines<Line>(ids: readonly number[], lines: readonly Line[], writer: LineWriter<Line>): void {
  for (const id of ids.slice(lines.length)) writer.remove(id);
  ids.slice(0, lines.length).forEach((id, position) => {
    writer.change(id, lines[position], position);
  });
  lines.slice(ids.length).forEach((line, index) => {
    writer.add(line, ids.length + index);
  });
}
