import { get as httpGet } from "node:http";
import { type ServedFarm, type ServedSize, withServedFarm } from "./serve-farm";
import { type BenchRow, rowOf, withTail } from "./timing";
import { typedCoverage, typedEnquiry } from "./typed-forms";
import { quiet, workedMs } from "./worked";

/**
 * The built app under load, on 127.0.0.1 alone: fifty readers at once, pages while a choice is proved, how soon long work stops, and what the same
 * question costs again. Bounded: some two thousand requests, a few minutes.
 */
export async function loadRows(): Promise<BenchRow[]> {
  const demo = [
    ...(await withServedFarm("demo", async (farm) => [await fiftyReaders(farm, "demo", "300 ms", "cold")])),
    ...(await withServedFarm("demo", async (farm) => [await fiftyReaders(farm, "demo", "300 ms", "left alone")])),
  ];
  const large = await withServedFarm("large", async (farm) => [
    await firstSights(farm),
    await fiftyReaders(farm, "large", "1 s", "cold"),
    await coverage(farm, "typing a count: coverage data", "/bookings/coverage", typedCoverage),
    await coverage(farm, "typing a count: an enquiry’s answer", "/enquiry/answer", typedEnquiry, firstLine),
    await coverage(farm, "ticking a bed: coverage data", "/keep-or-dig/try", tickedBeds),
    ...(await whileProving(farm)),
    ...(await stops(farm)),
    await leaving(farm),
    await againAsked(farm),
  ]);
  return [...demo, ...large];
}

const READERS = 50;
const PAGES = ["/", "/bookings", "/bookings/1", "/beds", "/enquiry", "/keep-or-dig", "/picking", "/buying", "/what-if"];

/** Each page over a connection of its own: a kept one may be closed by the server just as it is used again. */
const get = (address: string, path: string): Promise<void> =>
  new Promise((resolve, reject) => {
    httpGet(`${address}${path}`, { agent: false }, (answer) => {
      answer.on("end", () =>
        answer.statusCode === 200 ? resolve() : reject(new Error(`${path}: ${answer.statusCode}`)),
      );
      answer.resume();
    }).on("error", reject);
  });

const ask = (address: string, path: string, question: unknown, page = "bench", signal?: AbortSignal) =>
  fetch(`${address}${path}`, {
    method: "POST",
    headers: { "content-type": "application/json", origin: address, "page-name": page },
    body: JSON.stringify(question),
    signal,
  });

const timeOf = async (work: () => Promise<unknown>): Promise<number> => {
  const start = performance.now();
  await work();
  return performance.now() - start;
};

const after = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));

/** Each page as the first who asks for it meets it, the farm being read, planned and the page compiled before. */
async function firstSights({ address, pid }: ServedFarm): Promise<BenchRow> {
  for (const page of PAGES) await get(address, `${page}?all=warm`);
  const times: number[] = [];
  const before = workedMs(pid);
  for (let round = 0; round < 3; round++)
    for (const page of PAGES) times.push(await timeOf(() => get(address, `${page}?round=${round}`)));
  const note = `one reader; ${each(pid, before, times.length)}`;
  return rowOf("a page that nobody asked for before, large farm", times, "", note);
}

/**
 * Fifty readers, each walking all pages without a pause, each from another page on. Cold: the server was asked for other pages without a pause until
 * they come, so that none of theirs is rendered; left alone: it had the seconds after its start to itself, as on any morning.
 */
async function fiftyReaders(
  { address, pid }: ServedFarm,
  size: ServedSize,
  target: string,
  before: "cold" | "left alone",
): Promise<BenchRow> {
  if (before === "cold") for (const page of PAGES) await get(address, `${page}?warm`);
  else await quiet(pid);
  const times: number[] = [];
  const reader = async (number: number) => {
    for (let step = 0; step < 2 * PAGES.length; step++)
      times.push(await timeOf(() => get(address, PAGES[(number + step) % PAGES.length])));
  };
  const worked = workedMs(pid);
  await Promise.all(Array.from({ length: READERS }, (_, number) => reader(number)));
  const note = `${before === "cold" ? "no page rendered before they come" : "some seconds after the start"}; ${each(pid, worked, times.length)}`;
  return withTail(`50 people reading at once, ${size} farm, ${before}`, times, target, note);
}

const tickedBeds = (run: number) => ({
  seasonYear: 2027,
  keptBedIds: [2, 4, 6, 8].slice(run % 4).concat(10 + 2 * run),
});

/** So many questions are asked before the compiler has done with the code. */
const COLD_RUNS = 20;

/** What comes first of an answer in lines; the others are not waited for. */
async function firstLine(answer: Response): Promise<string> {
  const reader = answer.body?.getReader();
  const { value } = (await reader?.read()) ?? {};
  await reader?.cancel();
  return new TextDecoder().decode(value);
}

/** One question after the other, each another. */
async function coverage(
  { address, pid }: ServedFarm,
  name: string,
  path: string,
  question: (run: number) => unknown,
  read: (answer: Response) => Promise<string> = (answer) => answer.text(),
): Promise<BenchRow> {
  const times: number[] = [];
  let before = 0;
  for (let run = 0; run < 46; run++) {
    if (run === COLD_RUNS) before = workedMs(pid);
    times.push(
      await timeOf(async () => {
        const answer = await ask(address, path, question(run));
        if (!answer.ok) throw new Error(`${path} answered ${answer.status}: ${await answer.text()}`);
        const said = await read(answer);
        if (said.includes('"problems":[{')) throw new Error(said);
      }),
    );
  }
  const warm = times.slice(COLD_RUNS);
  const note = `over HTTP, each question another; ${each(pid, before, warm.length)}`;
  return rowOf(`${name}, large farm`, warm, "40 ms", note);
}

/** Pages while both threads prove a choice of 210 beds: pages that were asked for before, and pages that were not. */
async function whileProving(farm: ServedFarm): Promise<BenchRow[]> {
  const proofs = await Promise.all(
    ["cheapest", "curve"].map((question) => begun(farm, question, { question, seasonYear: 2027 })),
  );
  const [kept, fresh]: number[][] = [[], []];
  for (let round = 0; round < 12; round++)
    for (const page of PAGES) {
      kept.push(await timeOf(() => get(farm.address, page)));
      if (round < 6) fresh.push(await timeOf(() => get(farm.address, `${page}?proving=${round}`)));
    }
  for (const proof of proofs) await proof.stop();
  return [
    withTail("a page while a choice is proved, large farm", kept, "300 ms", "asked for before"),
    withTail("the same, nobody asked for it before", fresh, "300 ms", "rendered while both threads work"),
  ];
}

/** Long work under way: its first progress has come. `stop` presses Stop and waits for the end of the stream. */
async function begun({ address }: ServedFarm, page: string, question: unknown, path = "/keep-or-dig/choose") {
  const leaving = new AbortController();
  const answer = await ask(address, path, question, page, leaving.signal);
  const reader = answer.body?.pipeThrough(new TextDecoderStream()).getReader();
  if (!reader) throw new Error("no stream");
  let said = "";
  while (!said.includes("progress") && !said.includes("answer")) said += (await reader.read()).value ?? "";
  const workId = Number(/"workId":(\d+)/.exec(said)?.[1]);
  return {
    leave: () => leaving.abort(),
    stop: async () => {
      await ask(address, "/keep-or-dig/stop", { workId }, page);
      while (!(await reader.read()).done);
    },
  };
}

/** From Stop to the end of the stream, two seconds into each kind of long work. */
async function stops(farm: ServedFarm): Promise<BenchRow[]> {
  const times: number[] = [];
  for (const question of ["cheapest", "fewest", "curve", "sweep"]) {
    const work = await begun(farm, `stop ${question}`, { question, seasonYear: 2027 });
    await after(2000);
    times.push(await timeOf(work.stop));
  }
  const beds = { seasonYear: 2027, keptBedIds: [2, 4] };
  const sure = await begun(farm, "stop sure", beds, "/keep-or-dig/sure");
  times.push(await timeOf(sure.stop));
  return [rowOf("from Stop to the end, 210 beds", times, "1 s", "each kind of long work once, 2 s into it")];
}

/** What the server's threads still work in the second after the first second in which the reader of two proofs is gone. */
async function leaving(farm: ServedFarm): Promise<BenchRow> {
  const works = await Promise.all(
    ["cheapest", "curve"].map((question) => begun(farm, `leave ${question}`, { question, seasonYear: 2027 })),
  );
  await after(1000);
  for (const work of works) work.leave();
  await after(1000);
  const before = workedMs(farm.pid);
  await after(1000);
  const worked = workedMs(farm.pid) - before;
  return rowOf("work in the second second after the reader left", [worked], "none", "processor time, ms, all threads");
}

/** What the server has worked since `beforeMs`, an answer. Says more than the clock where others use the machine. */
const each = (pid: number, beforeMs: number, answerCount: number): string =>
  `${((workedMs(pid) - beforeMs) / answerCount).toFixed(1)} ms of processor time each`;

/** The same question four times at once and then once more. */
async function againAsked({ address }: ServedFarm): Promise<BenchRow> {
  const question = { question: "cheapest", seasonYear: 2027 };
  const whole = async (page: string) => (await ask(address, "/keep-or-dig/choose", question, page)).text();
  const first = await timeOf(() => Promise.all([1, 2, 3, 4].map((page) => whole(`again ${page}`))));
  const again = await timeOf(() => whole("again"));
  return rowOf(
    "the same choice asked again, large farm",
    [again],
    "",
    `four at once before it: ${first.toFixed(0)} ms`,
  );
}
