import { unstable_rethrow } from "next/navigation";

/** What an action answers; null when no answer came. A page that the framework is to open next, which comes as an error too, goes on to it. */
export async function answered<T>(asking: Promise<T>): Promise<T | null> {
  try {
    return await asking;
  } catch (error) {
    unstable_rethrow(error);
    return null;
  }
}
