import type { MetadataRoute } from "next";

/** What a phone needs to put the tool on its first screen. It is sent to everybody, and says nothing of the farm. */
const manifest = (): MetadataRoute.Manifest => ({
  name: "Stems & Saturdays",
  short_name: "Stems",
  start_url: "/today",
  scope: "/",
  display: "standalone",
  background_color: "#e4ece0",
  theme_color: "#0b5560",
  icons: [
    { src: "/icon.svg", sizes: "any", type: "image/svg+xml" },
    { src: "/apple-icon.png", sizes: "512x512", type: "image/png" },
  ],
});

export default manifest;
