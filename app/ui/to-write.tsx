/** A box to tick with a pencil. */
export const TickBox = () => <span className="tickbox" role="img" aria-label="box to tick" />;

/** Room to write in. */
export const WriteLine = () => <span className="write-line" />;
