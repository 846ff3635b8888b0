/** The icons of the tool, and what a phone needs to put it on its first screen. */
const OPEN_FILES = ["/icon.svg", "/apple-icon.png", "/manifest.webmanifest"];

/** What the browser needs to draw any page: it says nothing of the farm. */
export const isPlainFile = (path: string): boolean => path.startsWith("/_next/static/") || OPEN_FILES.includes(path);
