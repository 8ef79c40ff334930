import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Tenant } from "../../../src/views/keeping/tenant.ts";
import { FakeChannel } from "./fake-channel.ts";
import { FakeLocks } from "./fake-locks.ts";
import { Time } from "./time.ts";

/** Several tabs on one notebook. Each counts what it kept when it was asked for the pen. */
class House {
  readonly time = new Time();
  readonly locks = new FakeLocks();
  readonly channel = new FakeChannel();
  readonly tabs = new Map<string, Tab>();

  async open(name: string): Promise<Tab> {
    const tab = new Tab(name, this);
    this.tabs.set(name, tab);
    const begun = tab.tenant.begin();
    await this.time.pass(1000);
    await begun;
    return tab;
  }

  get writers(): string[] {
    return [...this.tabs.values()].filter(({ tenant }) => tenant.phase === "writing").map(({ name }) => name);
  }

  get phases(): Record<string, string> {
    return Object.fromEntries([...this.tabs.values()].map(({ name, tenant }) => [name, tenant.phase]));
  }
}

class Tab {
  readonly tenant: Tenant;
  readonly story: string[] = [];
  canKeep = true;
  /** A tab that hangs hears and says nothing. */
  hangs = false;
  private isDead = false;
  private readonly die: () => void;

  constructor(
    readonly name: string,
    private readonly house: House,
  ) {
    const { locks, die } = house.locks.tab(name);
    this.die = die;
    const channel = house.channel.tab(name);
    const host = {
      onPhase: (phase: string) => this.story.push(phase),
      keep: async () => {
        this.story.push("keeps");
        await new Promise<void>((done) => house.time.after(200, done));
        return this.canKeep;
      },
      onUnwilling: () => this.story.push("is refused"),
    };
    const ports = {
      locks,
      channel: {
        say: channel.say,
        onSaying: (listener: Parameters<typeof channel.onSaying>[0]) =>
          channel.onSaying((says, of) => this.hangs || listener(says, of)),
      },
      after: (ms: number, act: () => void) => house.time.after(ms, () => this.isDead || act()),
    };
    this.tenant = new Tenant("n", ports, host);
  }

  /** The tab is gone at once, as when it is killed. */
  kill(): void {
    this.isDead = true;
    this.house.channel.leave(this.name);
    this.die();
    this.house.tabs.delete(this.name);
  }
}

describe("tabs on one notebook", () => {
  test("the first writes, the second reads", async () => {
    const house = new House();
    await house.open("a");
    await house.open("b");
    expect(house.phases).toEqual({ a: "writing", b: "reading" });
  });

  test("the second takes over: the first keeps its last edit, then reads, and only then the second writes", async () => {
    const house = new House();
    const a = await house.open("a");
    const b = await house.open("b");
    b.tenant.takeOver();
    await house.time.pass(100);
    expect(house.phases).toEqual({ a: "giving", b: "taking" });
    await house.time.pass(200);
    expect(house.phases).toEqual({ a: "reading", b: "writing" });
    expect(a.story).toEqual(["writing", "giving", "keeps", "reading"]);
    a.tenant.takeOver();
    await house.time.pass(1000);
    expect(house.phases).toEqual({ a: "writing", b: "reading" });
  });

  test("when the writer is closed or killed the reader is offered the pen, and takes it if the person wants", async () => {
    for (const end of ["close", "kill"] as const) {
      const house = new House();
      const a = await house.open("a");
      const b = await house.open("b");
      if (end === "close") a.tenant.close();
      else a.kill();
      await house.time.pass(2000);
      expect(b.tenant.phase).toBe("free");
      b.tenant.takeOver();
      await house.time.pass(100);
      expect(b.tenant.phase).toBe("writing");
    }
  });

  test("a writer that is only loaded again writes again, and the reader reads on", async () => {
    const house = new House();
    const a = await house.open("a");
    const b = await house.open("b");
    a.kill();
    await house.time.pass(300);
    await house.open("a again");
    await house.time.pass(5000);
    expect(house.phases).toEqual({ b: "reading", "a again": "writing" });
    expect(b.story).toEqual(["reading"]);
  });

  test("a page that is loaded while the one before still leaves waits for its pen", async () => {
    const house = new House();
    const a = await house.open("a");
    house.time.after(200, () => a.kill());
    const again = await house.open("a again");
    expect(again.tenant.phase).toBe("writing");
  });

  test("a writer that cannot keep its changes goes on writing, and the reader is told", async () => {
    const house = new House();
    const a = await house.open("a");
    const b = await house.open("b");
    a.canKeep = false;
    b.tenant.takeOver();
    await house.time.pass(20_000);
    expect(house.phases).toEqual({ a: "writing", b: "reading" });
    expect(b.story).toContain("is refused");
  });

  test("from a tab that hangs the pen is taken, and it reads when it wakes up", async () => {
    const house = new House();
    const a = await house.open("a");
    const b = await house.open("b");
    a.hangs = true;
    b.tenant.takeOver();
    await house.time.pass(1000);
    expect(b.tenant.phase).toBe("taking");
    await house.time.pass(4000);
    expect(b.tenant.phase).toBe("writing");
    expect(a.tenant.phase).toBe("reading");
    expect(house.locks.holder("spanwise notebook n")).toBe("b");
  });

  test("two that want to take over at once come to an end: one writes", async () => {
    const house = new House();
    await house.open("a");
    const b = await house.open("b");
    const c = await house.open("c");
    b.tenant.takeOver();
    c.tenant.takeOver();
    await house.time.pass(20_000);
    expect(house.writers).toHaveLength(1);
    expect(house.phases.a).toBe("reading");
  });

  test("where the browser has no locks everyone writes, until one finds that another has written", async () => {
    const time = new Time();
    const channel = new FakeChannel();
    const host = { onPhase: () => undefined, keep: async () => true, onUnwilling: () => undefined };
    const tabs = ["a", "b"].map(
      (name) => new Tenant("n", { locks: undefined, channel: channel.tab(name), after: time.after }, host),
    );
    await Promise.all(tabs.map((tab) => tab.begin()));
    expect(tabs.map(({ phase }) => phase)).toEqual(["writing", "writing"]);
    tabs[0]?.isOverwritten();
    await time.pass(5000);
    expect(tabs.map(({ phase }) => phase)).toEqual(["reading", "writing"]);
    tabs[0]?.takeOver();
    await time.pass(5000);
    expect(tabs.map(({ phase }) => phase)).toEqual(["writing", "reading"]);
  });
});

const deeds = ["open", "open", "take", "take", "take", "kill", "close", "cannot keep"] as const;

for (const mayHang of [false, true]) {
  const title = `whatever tabs do${mayHang ? ", also where some hang" : ""}, never two write, the pen is never lost, and in the end any tab can have it`;
  test(title, async () => {
    const doing = fc.record({
      what: fc.constantFrom(...deeds, ...(mayHang ? (["hang"] as const) : [])),
      who: fc.nat(),
      pause: fc.constantFrom(0, 1, 50, 150, 300, 1500, 4000),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(doing, { minLength: 8, maxLength: 30, size: "max" }), async (doings) => {
        const house = new House();
        for (const [index, { what, who, pause }] of doings.entries()) {
          const tab = [...house.tabs.values()][who % Math.max(1, house.tabs.size)];
          if (what === "open") void house.open(`tab ${index}`);
          else if (tab) act(house, tab, what);
          await house.time.pass(pause);
          expect(house.writers.length).toBeLessThanOrEqual(1);
        }
        await house.time.pass(60_000);
        expect(Object.values(house.phases).filter((phase) => !/^(writing|reading|free)$/.test(phase))).toEqual([]);
        // The pen is with the one who writes, and was taken by force only from a tab that hung.
        expect(house.locks.holder("spanwise notebook n")).toBe(house.writers[0]);
        if (!mayHang) expect(house.locks.stolen).toBe(0);
        const last = [...house.tabs.values()].at(-1);
        for (const tab of house.tabs.values()) tab.canKeep = true;
        last?.tenant.takeOver();
        await house.time.pass(60_000);
        if (last) expect(house.writers).toEqual([last.name]);
      }),
      { seed: 7, numRuns: 200 },
    );
  });
}

function act(house: House, tab: Tab, what: "take" | "kill" | "close" | "cannot keep" | "hang"): void {
  if (what === "take") tab.tenant.takeOver();
  else if (what === "kill") tab.kill();
  else if (what === "hang") tab.hangs = true;
  else if (what === "cannot keep") tab.canKeep = false;
  else {
    tab.tenant.close();
    house.tabs.delete(tab.name);
  }
}
