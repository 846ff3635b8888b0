/** The form that an action was called with; an empty one when it was called with anything else, which no page of the tool does. */
export const sentForm = (sent: unknown): FormData => (sent instanceof FormData ? sent : new FormData());
