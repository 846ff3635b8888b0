/** Hidden fields that say of a form how it was sent; a leading "$" keeps them out of what was typed. */

/** The same for every sending of one filled form, until it was answered. */
export const SAVE_KEY = "$saveKey";

/** The farm's last change when what the form shows was read. */
export const REVISION = "$revision";
