import type { NextConfig } from "next";

const config: NextConfig = {
  serverExternalPackages: ["better-sqlite3", "highs"],
  poweredByHeader: false,
  // Pages go to this very machine: packing one takes longer than sending it plain. What is kept of a page is plain text too.
  compress: false,
  devIndicators: false,
  // As much as the door lets through (app/door/limits.ts).
  experimental: { serverActions: { bodySizeLimit: "4mb" } },
  // `npm test` checks the types of the whole tree; a build need not do it again.
  typescript: { ignoreBuildErrors: true },
};

export default config;
