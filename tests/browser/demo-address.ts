import { inject } from "vitest";

/** Where the demo farm of this lane is served: files that run at the same time have a server and a farm each. */
export const demoAddress = (): string => inject("addresses")[Number(process.env.VITEST_POOL_ID) - 1];
