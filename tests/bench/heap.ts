import type { Page } from "playwright-core";

/** Bytes that the page holds after a full collection: those of its scripts and those of its elements. */
export async function heapOf(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page);
  // What is freed by one collection can let go of more in the next.
  for (let round = 0; round < 3; round++) await session.send("HeapProfiler.collectGarbage");
  const { usedSize, embedderHeapUsedSize } = await session.send("Runtime.getHeapUsage");
  await session.detach();
  return usedSize + embedderHeapUsedSize;
}
