/** Said of what is typed as a count and is none. */
export const NO_COUNT = "write a whole number of stems, such as 12";
