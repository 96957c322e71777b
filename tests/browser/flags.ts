/** How every Chromium is started: no sandbox within a container, everything drawn in software, no talk with the outside. */
export const flags: readonly string[] = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-accelerated-2d-canvas",
  "--disable-gpu-rasterization",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];
