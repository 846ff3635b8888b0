/** What is wrong with a field and how to mend it, beside the field and announced when it comes. */
export const FieldProblem = ({ id, message }: { id: string; message: string | undefined }) => (
  <div id={id} aria-live="polite">
    {message && <p className="problem">{message}</p>}
  </div>
);
