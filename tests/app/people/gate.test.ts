import { AsyncLocalStorage } from "node:async_hooks";
import { mkdtempSync, rmSync } from "node:fs";
import type { Server } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { gate } from "../../../app/door/gate";
import { openDoor } from "../../../app/door/open-door";
import { ACTIONS, ROUTES } from "../../../app/people/allowed";
import { People } from "../../../app/people/people";
import type { Asking } from "../../../app/people/who";
import { knock } from "../door/knock";
import { THEIRS } from "./theirs";

const SECRET = "known to the process alone";
const folder = mkdtempSync(join(tmpdir(), "farm-"));
const people = new People(join(folder, "farm.sqlite"));
const asking = new AsyncLocalStorage<Asking>();
const ids = new Map(Object.keys(ACTIONS).map((name, index) => [`a${index}`, name]));
const idOf = (name: string) => [...ids].find(([, known]) => known.split("#")[1] === name || known === name)?.[0] ?? "";

let door: Server;
let port = 0;
const tokens: Record<string, string> = {};

beforeAll(async () => {
  for (const role of ["helper", "designer"] as const) {
    const hired = people.hire(`a ${role}`, role);
    const code = "id" in hired ? people.invite(hired.id) : null;
    tokens[role] = people.join(code ?? "") ?? "";
  }
  const open = { people, asking, address: "", isEncrypted: false };
  door = openDoor(
    (request, response) => {
      const who = asking.getStore()?.person;
      response.end(`in as ${who?.name ?? "nobody"}, ${request.headers["x-role"]}`);
    },
    { gate: gate(open, SECRET, ids) },
  );
  await new Promise<void>((resolve) => door.listen(0, "127.0.0.1", resolve));
  port = (door.address() as AddressInfo).port;
});
afterAll(() => {
  door.close();
  rmSync(folder, { recursive: true });
});

const own = () => `Host: 127.0.0.1:${port}\r\nOrigin: http://127.0.0.1:${port}\r\nConnection: close\r\n`;
const cookieOf = (role: string) => (tokens[role] ? `Cookie: theme=dark; session=${tokens[role]}\r\n` : "");
const get = (role: string, path: string, more = "") =>
  knock(port, `GET ${path} HTTP/1.1\r\n${own()}${cookieOf(role)}${more}\r\n`);
const post = (role: string, path: string, headers: string, body: string) =>
  knock(
    port,
    `POST ${path} HTTP/1.1\r\n${own()}${cookieOf(role)}${headers}Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`,
  );
const multipart = (fields: readonly (readonly [string, string])[]) =>
  `${fields.map(([name, text]) => `--x\r\nContent-Disposition: form-data; name="${name}"\r\n\r\n${text}\r\n`).join("")}--x--\r\n`;
const FORM = "Content-Type: multipart/form-data; boundary=x\r\n";
const isIn = (said: { body: string }) => said.body.startsWith("in as");
const locationOf = ({ head }: { head: string }) => /^location: *(.*)$/im.exec(head)?.[1]?.trim();

describe.each([
  { role: "helper", elsewhere: "/not-yours", ...THEIRS.helper },
  { role: "designer", elsewhere: "/not-yours", ...THEIRS.designer },
  { role: "stranger", elsewhere: "/sign-in", ...THEIRS.stranger },
] as const)("a $role", ({ role, routes, actions, home, elsewhere }) => {
  test("opens what is theirs of every page and route, and is sent on from all others before any is rendered", async () => {
    const opened: string[] = [];
    for (const route of Object.keys(ROUTES)) {
      const said = await get(role, route.replaceAll(/\[\w+\]/g, "1"));
      if (isIn(said)) opened.push(route);
      else expect([route, said.status, locationOf(said)]).toEqual([route, 303, route === "/" ? home : elsewhere]);
      const asPart = await get(role, route.replaceAll(/\[\w+\]/g, "1"), "RSC: 1\r\n");
      expect([route, isIn(asPart)]).toEqual([route, isIn(said)]);
      if (!isIn(said)) expect(asPart.status).toBe(role === "stranger" ? 401 : 403);
    }
    expect(opened.sort()).toEqual([...routes].sort());
  });

  test("calls what is theirs of every action, by a script, by a form, and by a form with bound values; all others reach nothing", async () => {
    const path = home;
    const called: string[] = [];
    for (const [id, name] of ids) {
      const byScript = await post(role, path, `Next-Action: ${id}\r\nContent-Type: text/plain\r\n`, "[]");
      const asJson = await post(role, path, `Next-Action: ${id}\r\nContent-Type: application/json\r\n`, "[]");
      const byForm = await post(role, path, FORM, multipart([[`$ACTION_ID_${id}`, ""]]));
      const bound = multipart([
        ["$ACTION_REF_1", ""],
        ["$ACTION_1:0", `{"id":"${id}","bound":"$@1"}`],
        ["$ACTION_1:1", "[{}]"],
      ]);
      const byBoundForm = await post(role, path, FORM, bound);
      const all = [byScript, asJson, byForm, byBoundForm].map(isIn);
      expect([name, new Set(all).size]).toEqual([name, 1]);
      if (all[0]) called.push(name.split("#")[1]);
      else expect(byForm.status).toBe(403);
    }
    expect(called.sort()).toEqual([...actions].sort());
  });

  test("is not helped by a call that hides behind another, names none, or is sent in a way that no form has", async () => {
    const [mine, theirs] = [idOf("chooseTheme"), idOf("deleteBed")];
    const decoys: [string, string][][] = [
      [],
      [["client", "x"]],
      [
        [`$ACTION_ID_${mine}`, ""],
        [`$ACTION_ID_${theirs}`, ""],
      ],
      [
        [`$ACTION_ID_${mine}`, ""],
        ["$ACTION_REF_x", ""],
        ["$ACTION_x:0", `{"id":"${theirs}","bound":null}`],
      ],
      [
        ["$ACTION_REF_1", ""],
        ["$ACTION_1:0", `{"id":"${mine}","bound":"$@1"}`],
        ["$ACTION_1:0", `{"id":"${theirs}","bound":"$@1"}`],
        ["$ACTION_1:1", "[{}]"],
      ],
      [
        [`$ACTION_ID_${mine}`, ""],
        ["$ACTION_REF_2", ""],
      ],
    ];
    for (const decoy of decoys) expect(isIn(await post(role, home, FORM, multipart(decoy)))).toBe(false);
  });

  test("is let through to no page by another spelling of its address", async () => {
    for (const path of [
      "/farm/history/",
      "/farm//history",
      "/sign-in/../farm/history",
      "/beds/..",
      "/beds/%2e%2e",
      "/join/..%2ffarm",
      "/_next/static/../../farm",
      "/_next/static/%2e%2e/%2e%2e/farm",
      "/beds/grid.rsc",
      "/bookings/1.rsc",
      "/%66arm",
      "/beds/%67rid",
      "/beds/%62uds",
      "/FARM",
      "/_next/data/x/farm.json",
      "/_next/image?url=%2Ffarm",
    ])
      expect([path, isIn(await get(role, path))]).toEqual([path, false]);
  });
});

test("who a request is from is told by its cookie alone: no header of its sender makes an owner", async () => {
  for (const header of ["X-Role: owner", "X-Person: 0", "Own-Asking: guessed\r\nX-Role: owner", "Role: owner"])
    expect(locationOf(await get("stranger", "/", `${header}\r\n`))).toBe("/sign-in");
  expect((await get("helper", "/picking", "X-Role: owner\r\n")).body).toBe("in as a helper, helper");
  expect((await get("stranger", "/", `Own-Asking: ${SECRET}\r\n`)).body).toBe("in as , owner");
  expect((await get("stranger", "/picking", `Own-Asking: ${SECRET}\r\nX-Role: helper\r\n`)).body).toBe(
    "in as , helper",
  );
});

test("who was ended is a stranger with the next request", async () => {
  const hired = people.hire("somebody for a day", "helper");
  if (!("id" in hired)) throw new Error(hired.problem);
  tokens.forADay = people.join(people.invite(hired.id) ?? "") ?? "";
  expect(isIn(await get("forADay", "/picking"))).toBe(true);
  people.end(hired.id);
  expect(locationOf(await get("forADay", "/picking"))).toBe("/sign-in");
});
