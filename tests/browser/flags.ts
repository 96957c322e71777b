/**
 * What Chromium brings up beside every new window: two pages for its own address field, which cost more than most of
 * ours, and a process in reserve. Only the last list counts that is given, so what Playwright leaves out is left out here too.
 */
const leftOut = [
  "WebUIOmniboxPopup",
  "WebUIOmniboxAimPopup",
  "SpareRendererForSitePerProcess",
  "AvoidUnnecessaryBeforeUnloadCheckSync",
  "DestroyProfileOnBrowserClose",
  "HttpsUpgrades",
  "HttpsFirstBalancedModeAutoEnable",
  "LensOverlay",
  "MediaRouter",
  "PaintHolding",
  "ThirdPartyStoragePartitioning",
  "AvoidCorsURLLoaderRestartOnRedirect",
  "OptimizationHints",
  "NetworkTimeServiceQuerying",
  "AimEnabled",
  "PreconnectToSearch",
];

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
  `--disable-features=${leftOut.join(",")}`,
];
