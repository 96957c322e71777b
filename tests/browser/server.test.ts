import { connect } from "node:net";
import { networkInterfaces } from "node:os";
import { expect, test } from "vitest";
import { ask, held, said, serveStrangers, served, token } from "./strangers.ts";

serveStrangers();

test("serves this machine alone, with a token in the address", async () => {
  const { hostname, port, search, hash } = new URL(served.url);
  expect(hostname).toBe("127.0.0.1");
  // Behind the `#`, it is sent to nobody.
  expect([search, hash]).toEqual(["", `#token=${token}`]);
  expect(token).toMatch(/^[0-9a-f]{32}$/);
  const others = Object.values(networkInterfaces())
    .flatMap((all) => all ?? [])
    .filter(({ address, family }) => family === "IPv4" && address !== "127.0.0.1")
    .map(({ address }) => address);
  // 127.0.0.2 is this machine too, wherever the whole of 127/8 is (RFC 1122, 3.2.1.3).
  for (const address of ["127.0.0.2", "::1", ...others])
    expect(await answers(address, Number(port)), address).toBe(false);
  expect(await answers("127.0.0.1", Number(port))).toBe(true);
});

function answers(address: string, port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const line = connect({ host: address, port, timeout: 10_000 }, () => resolve(true));
    line.on("error", () => resolve(false));
    line.on("timeout", () => resolve(false));
    line.on("close", () => line.destroy());
    line.on("connect", () => line.destroy());
  });
}

const behindToken = [
  ["GET", "/corpus"],
  ["GET", "/corpus/files"],
  ["HEAD", "/corpus/files"],
  ["GET", "/corpus/changes"],
  ["GET", "/corpus/committed"],
  ["GET", "/corpus/history"],
  ["GET", "/corpus/enclosed"],
  ["GET", "/corpus/memo"],
  ["GET", "/corpus/told"],
  ["GET", "/corpus/drafts"],
  ["GET", "/%63orpus/files"],
  ["GET", "/corpus/none"],
  ["POST", "/corpus/allow"],
  ["POST", "/corpus/edit"],
  ["POST", "/corpus/memo"],
  ["POST", "/corpus/told"],
] as const;

test.each(behindToken)("%s %s needs the token, and it whole", async (method, path) => {
  for (const given of [
    undefined,
    "",
    "0".repeat(32),
    token.slice(1),
    `${token}0`,
    token.toUpperCase() + " ",
  ]) {
    const { status, body } = await ask(
      path,
      given === undefined ? {} : { "x-variorum-token": given },
      method,
    );
    expect(status).toBe(403);
    expect(body).not.toContain("Sallow");
  }
});

test("the token stands in an address only where one listens for changes", async () => {
  expect((await ask(`/corpus/changes?token=${token}`)).status).toBe(200);
  expect((await ask(`/corpus/changes?token=${token.slice(1)}`)).status).toBe(403);
  for (const path of ["files", "enclosed", "history", "memo", "changes/", "files?x=/corpus/changes&"]) {
    const asked = `/corpus/${path}${path.includes("?") ? "" : "?"}token=${token}`;
    expect((await ask(asked)).status, path).toBe(403);
  }
});

test.each([
  ["host", "example.org"],
  ["host", "localhost"],
  ["host", "127.0.0.1"],
  ["host", "127.0.0.1:1"],
  ["host", "127.0.0.1.example.org"],
  ["host", "[::1]"],
  ["origin", "http://example.org"],
  ["origin", "http://127.0.0.1"],
  ["origin", "http://localhost:5173"],
  ["origin", "https://127.0.0.1"],
  ["origin", "file://"],
  ["origin", "null"],
  ["origin", ""],
  ["sec-fetch-site", "cross-site"],
  ["sec-fetch-site", "same-site"],
])("a request whose %s is %j is refused, with the token or without", async (name, value) => {
  const { host, port } = new URL(served.url);
  const also = /:\d+$/.test(value) || !/^http|^[\w.[\]:]+$/.test(value) ? [] : [`${value}:${port}`];
  for (const one of [value, ...also].filter((each) => each !== host && each !== `http://${host}`))
    for (const path of ["/", "/corpus/files", "/corpus/nothing", "/assets/none.js"])
      for (const method of ["GET", "POST", "OPTIONS", "PUT"]) {
        const { status, body, headers } = await ask(path, { ...held(), [name]: one }, method);
        expect(status, `${method} ${path} ${one}`).toBe(403);
        expect(body).not.toContain("Sallow");
        expect(Object.keys(headers).filter((head) => head.startsWith("access-control"))).toEqual([]);
      }
});

test("its own pages are answered", async () => {
  const { host, origin } = new URL(served.url);
  for (const site of ["same-origin", "none"])
    expect((await ask("/corpus/files", { ...held(), host, origin, "sec-fetch-site": site })).status).toBe(
      200,
    );
});

test("nobody is let in by what other ways of asking a server know", async () => {
  const { host } = new URL(served.url);
  const given = `x-variorum-token: ${token}\r\n`;
  const ends = "Connection: close\r\n\r\n";
  const asks: Readonly<Record<string, string>> = {
    "two hosts": `GET /corpus/files HTTP/1.1\r\nHost: ${host}\r\nHost: example.org\r\n${ends}`,
    "no host": `GET / HTTP/1.1\r\n${given}${ends}`,
    "no host, of old": `GET / HTTP/1.0\r\n${given}\r\n`,
    "a whole address": `GET http://example.org/corpus/files HTTP/1.1\r\nHost: example.org\r\n${given}${ends}`,
    "a broken host": `GET / HTTP/1.1\r\nHost: a b/c@${host}\r\n${given}${ends}`,
    "an upgrade": `GET /corpus/changes HTTP/1.1\r\nHost: ${host}\r\nUpgrade: websocket\r\nConnection: Upgrade\r\nSec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\nSec-WebSocket-Version: 13\r\nOrigin: http://example.org\r\n\r\n`,
    "a tunnel": `CONNECT example.org:80 HTTP/1.1\r\nHost: ${host}\r\n\r\n`,
    "no HTTP": "\u0016\u0003\u0001\u0000\r\n\r\n",
    "a line for ever": `GET /${"a".repeat(100_000)} HTTP/1.1\r\nHost: ${host}\r\n\r\n`,
    "two lengths": `POST /corpus/undo HTTP/1.1\r\nHost: ${host}\r\n${given}Content-Length: 2\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n`,
  };
  for (const [name, text] of Object.entries(asks)) {
    const back = await said(text);
    expect(back, name).toMatch(/^$|^HTTP\/1\.1 4/);
    expect(back, name).not.toContain("Sallow");
  }
});
