/** The name of the box that says of a doubtful planting: it is meant as it stands. */
export const MEANT = "isMeant";
