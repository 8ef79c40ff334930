import { describe, expect, test } from "vitest";
import type { Cell, StudyCell } from "../../../src/cells/cell.ts";
import { Crew } from "../../../src/cells/crew/crew.ts";
import { LiveStudies, type StudyNews } from "../../../src/cells/crew/live-studies.ts";
import { editCell } from "../../../src/cells/notebook.ts";
import { Session } from "../../../src/cells/session.ts";
import type { Program } from "../../../src/cells/step.ts";
import { prepareStudy } from "../../../src/cells/studies/prepare.ts";
import { rowsOf } from "../../../src/cells/studies/work.ts";
import { countedFunctions } from "../counted-functions.ts";
import { cellsOf } from "../notebook-text.ts";
import { FakePort, settle } from "./fake-port.ts";

const text = `given a from 0 to 10 = 3
given b = 2
given other from 0 to 1 = 0.5
y = tick(a * b, "y")
z = other * 2
check fine = y < 10`;

const sweep = (id: string, more: Partial<StudyCell> = {}): StudyCell => ({
  ...{ id, kind: "study", name: `study_${id}`, study: "sweep", inputs: [{ input: "a", points: 101 }], results: ["y"] },
  ...more,
});

function studyIn(program: Program, id: string): { study: StudyCell } | null {
  const cell = program.byId.get(id)?.cell;
  return cell?.kind === "study" ? { study: cell } : null;
}

/** A notebook with studies, over hands that work when the test says so. */
async function opened(studies: readonly StudyCell[], hands = 1) {
  const { table, ran } = countedFunctions();
  const port = new FakePort(table, hands);
  const crew = new Crew(port, table);
  const session = new Session(table, crew.compute);
  session.open({ title: "", cells: [...cellsOf(text), ...studies], trials: [] });
  await session.settled();
  const live = new LiveStudies(session, crew);
  const heard: StudyNews[] = [];
  const watch = (id: string) =>
    live.watch(
      id,
      (program) => studyIn(program, id),
      () => heard.push(live.news(id) as StudyNews),
    );
  const edit = async (id: string, patch: object): Promise<void> => {
    session.edit((notebook) => editCell(notebook, id, patch));
    await session.settled();
  };
  /** What a study comes to when it is run at once. */
  const whole = (id: string): unknown => {
    const study = prepareStudy(
      session.notebook,
      session.notebook.cells.find((cell) => cell.id === id) as StudyCell,
      table,
    );
    return study.conclude(rowsOf(study));
  };
  return { port, crew, session, live, heard, watch, edit, whole, ran };
}

describe("a study that is looked at", () => {
  test("is run in parts, tells how far it is and what it comes to, and ends with just what it comes to at once", async () => {
    const { port, live, heard, watch, whole } = await opened([sweep("s")]);
    watch("s");
    expect(live.news("s")).toMatchObject({ status: "waiting", progress: 0, outcome: null });
    port.pass(300);
    await port.workAll(50);
    expect(live.news("s")).toMatchObject({ status: "done", progress: 1, left: 0, isOld: false });
    expect(live.news("s")?.outcome).toEqual(whole("s"));
    const shares = heard.map(({ progress }) => progress);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.filter((share) => share > 0 && share < 1).length).toBeGreaterThan(2);
  });

  test("tells partial results and an estimate on the way", async () => {
    const { port, heard, watch } = await opened([sweep("s", { inputs: [{ input: "a", points: 2001 }] })]);
    watch("s");
    port.pass(300);
    await port.workAll(60);
    const partial = heard.filter(({ status, outcome }) => status === "running" && outcome !== null);
    expect(partial.length).toBeGreaterThan(0);
    const [first] = partial;
    if (first?.outcome?.study !== "sweep") throw new Error("expected a sweep");
    const [curve] = first.outcome.curves;
    const there = curve?.results[0]?.filter((each) => each !== null).length ?? 0;
    expect(there).toBeGreaterThan(0);
    expect(there).toBeLessThan(2001);
    expect(heard.some(({ left }) => left !== null && left > 0)).toBe(true);
  });

  test("is left alone by an edit that does not touch it, or only says why it is there", async () => {
    const { port, live, watch, edit, ran } = await opened([sweep("s", { checks: [] }), sweep("t", { results: ["z"] })]);
    watch("s");
    port.pass(300);
    await port.workAll(50);
    ran();
    await edit("3", { formula: "0.7" });
    await edit("s", { reason: "to see", title: "A sweep" });
    port.pass(300);
    await port.workAll(50);
    expect(live.news("s")).toMatchObject({ status: "done" });
    expect(ran()).toBe("");
  });

  test("is run anew where an edit touches it: what it came to stays until then, told as old", async () => {
    const { port, live, watch, edit, whole } = await opened([sweep("s")]);
    watch("s");
    port.pass(300);
    await port.workAll(50);
    const before = live.news("s")?.outcome;
    await edit("2", { formula: "5" });
    expect(live.news("s")).toMatchObject({ status: "waiting", isOld: true, outcome: before });
    port.pass(300);
    await port.workAll(50);
    expect(live.news("s")).toMatchObject({ status: "done", isOld: false });
    expect(live.news("s")?.outcome).toEqual(whole("s"));
    expect(live.news("s")?.outcome).not.toEqual(before);
  });

  test("waits for a pause in the edits, and runs for the last of them only", async () => {
    const { port, live, watch, edit, ran, whole } = await opened([sweep("s")]);
    watch("s");
    for (const value of ["3", "4", "5", "6"]) {
      await edit("2", { formula: value });
      port.pass(100);
      await settle();
    }
    expect(port.lines).toHaveLength(0);
    ran();
    port.pass(300);
    await port.workAll(50);
    expect(live.news("s")?.outcome).toEqual(whole("s"));
  });

  test("that an edit touches while it runs is broken off and begins anew", async () => {
    const { port, live, watch, edit, whole } = await opened([sweep("s", { inputs: [{ input: "a", points: 2001 }] })]);
    watch("s");
    port.pass(300);
    for (let count = 0; count < 6; count++) await port.work();
    expect(live.news("s")?.status).toBe("running");
    await edit("2", { formula: "7" });
    expect(live.news("s")).toMatchObject({ status: "waiting", progress: 0 });
    port.pass(300);
    await port.workAll(50);
    expect(live.news("s")).toMatchObject({ status: "done", progress: 1 });
    expect(live.news("s")?.outcome).toEqual(whole("s"));
  });

  test("is run by several hands where it is worth it, to the same end", async () => {
    const { port, live, watch, whole } = await opened([sweep("s", { inputs: [{ input: "a", points: 3001 }] })], 3);
    watch("s");
    port.pass(300);
    await port.workAll(50);
    expect(port.lines).toHaveLength(3);
    expect(live.news("s")?.outcome).toEqual(whole("s"));
  });

  test("goes on where a hand breaks in the middle, and loses nothing", async () => {
    const { port, live, watch, whole } = await opened([sweep("s", { inputs: [{ input: "a", points: 2001 }] })], 2);
    watch("s");
    port.pass(300);
    for (let round = 0; round < 6; round++) {
      await settle();
      for (const line of port.lines) await port.work(line);
      port.pass(30);
    }
    expect(live.news("s")?.status).toBe("running");
    expect(live.news("s")?.progress).toBeGreaterThan(0);
    port.lines[0]?.broke();
    for (let round = 0; round < 4000 && live.news("s")?.status !== "done"; round++) {
      await settle();
      port.pass(40);
    }
    expect(live.news("s")?.status).toBe("done");
    expect(live.news("s")?.outcome).toEqual(whole("s"));
  });

  test("stops when nobody looks at it any more, and begins when somebody does again", async () => {
    const { port, live, watch } = await opened([sweep("s")]);
    const end = watch("s");
    port.pass(300);
    await port.work();
    end();
    await port.workAll(50);
    expect(live.news("s")?.status).not.toBe("done");
    watch("s");
    port.pass(300);
    await port.workAll(50);
    expect(live.news("s")?.status).toBe("done");
  });

  test("is stopped by a person, keeps what is there, and is run again when that is asked for", async () => {
    const { port, live, watch, whole } = await opened([sweep("s", { inputs: [{ input: "a", points: 2001 }] })]);
    watch("s");
    port.pass(300);
    for (let count = 0; count < 12; count++) {
      await port.work();
      port.pass(50);
    }
    live.stop("s");
    const { progress } = live.news("s") as StudyNews;
    expect(live.news("s")).toMatchObject({ status: "stopped" });
    expect(progress).toBeGreaterThan(0);
    await port.workAll(50);
    expect(live.news("s")).toMatchObject({ status: "stopped", progress });
    live.run("s");
    await port.workAll(50);
    expect(live.news("s")?.outcome).toEqual(whole("s"));
  });

  test("that would take minutes is not run unasked, and says how long it would take", async () => {
    const { port, live, watch } = await opened([sweep("s", { inputs: [{ input: "a", points: 201 }] })]);
    port.variantTime = 1000;
    watch("s");
    port.pass(300);
    await port.workAll(300);
    const news = live.news("s") as StudyNews;
    expect(news.status).toBe("long");
    expect(news.left).toBeGreaterThan(60_000);
    live.run("s");
    await port.workAll(300);
    expect(live.news("s")?.status).toBe("done");
  });

  test("that cannot be run says why, and runs once that is mended", async () => {
    const { port, live, watch, edit } = await opened([sweep("s", { inputs: [{ input: "b" }] })]);
    watch("s");
    port.pass(300);
    await port.workAll(50);
    expect(live.news("s")).toMatchObject({ status: "refused", outcome: null });
    expect(live.news("s")?.message).toContain("range");
    await edit("2", { range: ["1", "3"] });
    port.pass(300);
    await port.workAll(50);
    expect(live.news("s")?.status).toBe("done");
  });

  test("that is gone is told as done with nothing, and an input whose value makes no difference is left out", async () => {
    const { port, live, session, edit, ran } = await opened([sweep("s", { checks: [] })]);
    let isThere = true;
    live.watch(
      "s",
      (program) => (isThere ? { ...(studyIn(program, "s") as { study: StudyCell }), without: "1" } : null),
      () => undefined,
    );
    port.pass(300);
    await port.workAll(50);
    ran();
    await edit("1", { formula: "5" });
    expect(live.news("s")?.status).toBe("done");
    isThere = false;
    session.edit((notebook) => editCell(notebook, "2", { formula: "5" }));
    expect(live.news("s")).toMatchObject({ status: "done", outcome: null });
  });

  test("of any sort comes to what it comes to at once, whatever parts it is cut into", async () => {
    const studies: StudyCell[] = [
      sweep("m", {
        study: "map",
        inputs: [
          { input: "a", points: 9 },
          { input: "other", points: 7 },
        ],
        results: ["y", "z"],
      }),
      sweep("e", { study: "sensitivity", inputs: [{ input: "a" }, { input: "b" }] }),
      sweep("t", {
        study: "tolerance",
        inputs: [
          { input: "a", plus_minus: "1" },
          { input: "b", plus_minus: "0.1", law: "normal" },
        ],
        builds: 300,
      }),
      sweep("o", { study: "solve", inputs: [{ input: "a" }], target: "7" }),
      sweep("b", { study: "best", inputs: [{ input: "a" }], goals: ["most"] }),
    ];
    const { port, live, watch, whole } = await opened(studies, 2);
    port.variantTime = 3;
    for (const { id } of studies) watch(id);
    port.pass(300);
    await port.workAll(40);
    for (const { id } of studies) {
      expect(live.news(id)?.status).toBe("done");
      expect(live.news(id)?.outcome).toEqual(whole(id));
    }
  });
});

test("a slow cell does not wait for a study that runs", async () => {
  const { table } = countedFunctions();
  const functions = new Map(
    [...table].map(([name, spec]) => [name, name === "tick" ? { ...spec, isSlow: true as const } : spec]),
  );
  const port = new FakePort(functions);
  const crew = new Crew(port, functions);
  const session = new Session(functions, crew.compute);
  const cells: Cell[] = [...cellsOf(text), sweep("s", { inputs: [{ input: "a", points: 5001 }] })];
  session.open({ title: "", cells, trials: [] });
  await port.workAll();
  const live = new LiveStudies(session, crew);
  live.watch(
    "s",
    (program) => studyIn(program, "s"),
    () => undefined,
  );
  port.pass(300);
  for (let count = 0; count < 6; count++) await port.work();
  session.edit((notebook) => editCell(notebook, "1", { formula: "4" }));
  await session.settled();
  expect(session.isPending("4")).toBe(true);
  for (let count = 0; count < 3; count++) await port.work();
  expect(session.isPending("4")).toBe(false);
  expect(session.result("4")).toMatchObject({ value: 8 });
});
