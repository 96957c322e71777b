import { expect } from "vitest";
import { walk } from "./chromium.ts";
import { boxes, openMap, places, press, said, shown, widget, yearsFollowed } from "./map-walk.ts";
import { copyOf, frames, heldBack, tabTo, through, visit } from "./through.ts";

walk("goes from the question over the map to the thing and back by keys alone", async (page) => {
  await through(page, copyOf("tests/corpora/walk"), async () => {
    await tabTo(page, "Was the ditch dug");
    await page.keyboard.press("Enter");
    await page
      .getByRole("heading", { name: "Was the ditch dug for defence or for drainage?", level: 1 })
      .waitFor();
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await tabTo(page, " Map");
    await page.keyboard.press("Enter");
    await widget(page).waitFor();
    expect(shown(page).get("question")).toBe("what-for");
    await tabTo(page, "application");
    expect(await press(page, "ArrowRight")).toMatch(
      /^Answer: The ditch was dug for (defence|to drain the field)\. It is open\. Under it: 1\./,
    );
    expect(await press(page, "ArrowDown")).toContain("Argument: by function, Hale 1896. It is open.");
    expect(await press(page, "ArrowDown")).toContain("Seen or measured: ");
    expect(await press(page, "ArrowDown")).toBe("Thing: The ditch at Merrow End. Above it: 2.");
    expect(await press(page, "ArrowDown")).toBe("Nothing is under it here.");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "The ditch at Merrow End", level: 1 }).waitFor();
    expect(new URL(page.url()).pathname).toBe("/record/ditch");
    await page.goBack();
    await widget(page).waitFor();
    await expect.poll(() => said(page)).toContain("Thing: The ditch at Merrow End.");
    await tabTo(page, "application");
    expect(await press(page, "ArrowUp")).toContain("Seen or measured: ");
  });
});

walk("is arrived at when it can be seen, and the page before stays until then", async (page) => {
  const come = await heldBack(page, /\/map-page-[^/]*\.js$/);
  await through(page, copyOf("tests/corpora/walk"), async () => {
    await visit(page, "/question/what-for");
    const before = await page.title();
    await page.keyboard.press("2");
    await expect.poll(() => page.locator("main").getAttribute("aria-busy")).toBe("true");
    // Long enough for its data, which make no page yet.
    await frames(page, 30);
    expect(await page.title()).toBe(before);
    expect(await page.locator("table.answers").count()).toBe(1);
    come();
    await expect.poll(() => page.title()).not.toBe(before);
    await expect.poll(() => widget(page).count()).toBe(1);
  });
});

walk("unfolds in place by Space, folds again, and goes back", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    await openMap(page, "/map?question=what-was-it");
    const before = await boxes(page);
    let where = await said(page);
    for (const key of ["ArrowDown", "ArrowDown"]) where = await press(page, key);
    for (let step = 0; step < 12 && !where.includes("Folded up"); step++) {
      where = await press(page, "ArrowRight");
    }
    expect(where).toContain("Folded up");
    await page.keyboard.press("Space");
    await expect.poll(async () => (await boxes(page)).length).toBeGreaterThan(before.length);
    const open = shown(page).get("open");
    expect(open).not.toBeNull();
    await expect.poll(() => said(page)).toContain(where.slice(0, where.indexOf(".")));
    await page.keyboard.press("Space");
    await expect.poll(() => boxes(page)).toEqual(before);
    await page.goBack();
    await expect.poll(() => shown(page).get("open")).toBe(open);
    await expect.poll(async () => (await boxes(page)).length).toBeGreaterThan(before.length);
    await page.getByRole("button", { name: "fold all" }).click();
    await expect.poll(() => boxes(page)).toEqual(before);
  });
});

walk("puts a record in focus, alone, and lets go of it", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    await openMap(page, "/map?question=what-was-it");
    const all = (await places(page)).length;
    const boxes = (): Promise<readonly string[]> =>
      page
        .locator("[data-box]")
        .evaluateAll((found) => found.map((one) => one.getAttribute("data-box") ?? ""));
    const whole = await boxes();
    await page.keyboard.press("f");
    await expect.poll(() => page.locator(".map-focus").textContent()).toContain("In focus: ");
    const focus = shown(page).get("focus");
    expect(focus).not.toBeNull();
    await expect.poll(async () => (await places(page)).length).toBe(all);
    await page.keyboard.press("o");
    await expect.poll(() => page.locator(".map-focus").textContent()).toContain("Shown alone: ");
    expect(shown(page).get("only")).not.toBeNull();
    // What does not bear on it is gone; what bears on it is unfolded, and may be more than there was.
    await expect
      .poll(async () => {
        const alone = await boxes();
        return whole.filter((box) => !alone.includes(box)).length;
      })
      .toBeGreaterThan(3);
    await page.getByRole("button", { name: "leave the focus" }).click();
    await expect.poll(() => shown(page).get("focus")).toBeNull();
    await expect.poll(async () => (await places(page)).length).toBe(all);
    await widget(page).focus();
    await page.keyboard.press("Escape");
    await expect.poll(() => page.locator(".map-panel").count()).toBe(0);
  });
});

walk("moves the year: standings change and are told, and nothing moves", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    await visit(page, "/map?question=what-was-it");
    await widget(page).waitFor();
    const before = await places(page);
    const frame = await widget(page).boundingBox();
    const standings = (): Promise<readonly string[]> => page.locator("[data-box]").allTextContents();
    const now = await standings();
    await page.getByRole("slider").focus();
    const told: string[] = [];
    for (let step = 0; step < 8; step++) {
      const year = shown(page).get("as-of");
      await page.keyboard.press("ArrowLeft");
      await expect.poll(() => shown(page).get("as-of")).not.toBe(year);
      const heading = page.locator(".map-changes h2");
      await expect.poll(() => heading.textContent()).toBe(`What changed in ${shown(page).get("as-of")}`);
      await page.locator("main[aria-busy=false]").waitFor();
      told.push(...(await page.locator(".map-changes li").allTextContents()));
      expect(await places(page)).toEqual(before);
      expect(await widget(page).boundingBox()).toEqual(frame);
    }
    await expect.poll(() => standings()).not.toEqual(now);
    expect(told.some((line) => /\b(stands|open|falls|unsupported)\b/.test(line))).toBe(true);
  });
});

walk("replays the years and stops; where motion is not wanted, a press is a step", async (page) => {
  await through(page, copyOf("tests/corpora/walk"), async ({ at }) => {
    await visit(page, "/map?question=what-for");
    const years = await yearsFollowed(page);
    await page.getByRole("button", { name: "replay" }).click();
    await expect.poll(years).toEqual(["1896", "1951"]);
    await page
      .getByRole("button", { name: "stop" })
      .or(page.getByRole("button", { name: "replay" }))
      .waitFor();
    await page.emulateMedia({ reducedMotion: "reduce" });
    await page.goto(at("/map?question=what-for"));
    await page.getByRole("button", { name: "next year" }).click();
    await expect.poll(() => shown(page).get("as-of")).toBe("1896");
    await page.getByRole("button", { name: "next year" }).click();
    await expect.poll(() => shown(page).get("as-of")).toBe("1951");
  });
});

walk("is the outline and one answer at a time where the screen is narrow", async (page) => {
  await page.setViewportSize({ width: 390, height: 800 });
  await through(page, copyOf("demo-corpus"), async () => {
    const overflow = (): Promise<number> =>
      page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    await visit(page, "/map?question=what-was-it");
    await page.getByRole("link", { name: "As an outline" }).waitFor();
    await expect.poll(() => widget(page).count()).toBe(0);
    await expect.poll(() => overflow()).toBe(0);
    await page.locator(".map-answers a").first().click();
    await widget(page).waitFor();
    expect(shown(page).get("narrow")).toBe("1");
    await expect.poll(async () => (await places(page)).length).toBeLessThanOrEqual(20);
    await expect.poll(() => overflow()).toBe(0);
    await page.setViewportSize({ width: 1280, height: 800 });
    await expect.poll(() => shown(page).get("narrow")).toBeNull();
  });
});

walk("teaches what makes a map where there is no question, and none that argues", async (page) => {
  await through(page, copyOf("tests/corpora/empty"), async () => {
    await visit(page, "/map");
    await page.getByRole("heading", { name: "Map", level: 1 }).waitFor();
    await expect.poll(() => page.locator("main").textContent()).toContain("The corpus asks no question yet");
    await expect.poll(() => page.locator("main pre").textContent()).toContain("questions:");
  });
});

walk("says of answers that hang in the air what would hold them", async (page) => {
  const question = `questions: [{ id: q, text: "What for?", answers: [a] }]\nclaims: [{ id: a, text: A roof. }]\n`;
  await through(page, copyOf("tests/corpora/empty", { "question.yaml": question }), async () => {
    await openMap(page, "/map?question=q");
    await expect.poll(() => said(page)).toBe("Answer: A roof. It is unsupported.");
    await expect.poll(() => page.locator("main pre").textContent()).toContain("because:");
  });
});
