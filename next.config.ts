import type { NextConfig } from "next";

const config: NextConfig = {
  serverExternalPackages: ["better-sqlite3", "highs"],
  poweredByHeader: false,
  devIndicators: false,
  typescript: { ignoreBuildErrors: false },
};

export default config;
