import { expect, it } from "vitest";
import { LiveNotebook } from "../../src/notebook/live";
import { answering } from "../../src/study/answering";
import { Stopped, StudyClient, type StudyPort } from "../../src/study/client";
import type { StudyReply } from "../../src/study/messages";
import { columnOf, rowsNamed } from "../../src/study/rows";
import { subjectOf } from "../../src/study/subject";
import { sample } from "../notebook/sample";

/** A client and the worker's side, joined by copies of their messages, as a worker would get them. */
function joined(): StudyClient {
  let listen: (event: MessageEvent<StudyReply>) => void = () => undefined;
  const answer = answering((reply) => {
    const data = structuredClone(reply);
    setTimeout(() => listen(new MessageEvent("message", { data })), 0);
  });
  const port: StudyPort = {
    postMessage: (request) => {
      const copy = structuredClone(request);
      setTimeout(() => answer(copy), 0);
    },
    addEventListener: (_type, listener) => {
      listen = listener;
    },
  };
  return new StudyClient(port);
}

const live = new LiveNotebook(sample());
const { notebook } = live;
const subject = (rows: string) => subjectOf(live, columnOf(notebook, "Cruiser"), rowsNamed(notebook, rows));
const drop = subject("Supply.drop,Supply.drop_ok");
const run = drop.inputs.findIndex(({ name }) => name === "Supply.run");
const shape = { kind: "even", low: 5, high: 30 } as const;

it("answers every study across the line, by a kernel compiled from text", async () => {
  const client = joined();
  expect(await client.open(drop, notebook.pages)).toEqual({ by: "text", why: undefined });
  const range = { low: 1, high: 30 };
  const solved = await client.ask("solve", { input: run, result: 0, wanted: 0.6, range });
  expect(solved.solutions).toHaveLength(1);
  const least = await client.ask("smallest", { input: run, range });
  expect(least.value).toBe(1);
  const moved = await client.ask("moves", { result: 0 });
  expect(moved.moves.length).toBe(3);
  const grid = await client.ask("two inputs", {
    across: { input: run, range },
    down: { input: run, range },
    result: 0,
  });
  expect(grid.results).toHaveLength(21);
  const spread = await client.ask("spread", { varied: [{ input: run, shape }], trials: 100, common: 0, seed: 1 });
  expect(spread.results[0]?.values).toHaveLength(100);
});

it("stops a study that runs, and goes on answering", async () => {
  const client = joined();
  await client.open(drop, notebook.pages);
  const stop = new AbortController();
  const long = client.ask(
    "spread",
    { varied: [{ input: run, shape }], trials: 1_000_000, common: 0, seed: 1 },
    { signal: stop.signal, progress: () => stop.abort() },
  );
  await expect(long).rejects.toThrow(Stopped);
  expect((await client.ask("moves", { result: 0 })).moves.length).toBe(3);
});

it("stops what runs when the notebook changes", async () => {
  const client = joined();
  await client.open(drop, notebook.pages);
  const long = client.ask("spread", { varied: [{ input: run, shape }], trials: 1_000_000, common: 0, seed: 1 });
  const stopped = expect(long).rejects.toThrow(Stopped);
  await client.open(subject("Supply.drop"), notebook.pages);
  await stopped;
});

it("hands refusals on as sentences", async () => {
  const client = joined();
  await expect(client.ask("moves", { result: 0 })).rejects.toThrow("Nothing can be asked before the notebook is there");
  await client.open(drop, notebook.pages);
  await expect(client.ask("solve", { input: run, result: 0, wanted: 1, range: { low: 3, high: 2 } })).rejects.toThrow(
    "Supply.run: the range from 3 to 2 is empty",
  );
});
