import { html, nothing, type TemplateResult } from "lit";
import type { ChartTable } from "./charts/chart-table.ts";
import { formatNumber } from "./format.ts";
import { words } from "./study-words.ts";

/** Rows of a table on the page; a file of its values has all. */
const mostRows = 200;

/** Tables of numbers, each under its title. */
export function numbersTables(tables: readonly ChartTable[]): TemplateResult[] {
  return tables.map(({ title, columns, rows }) => {
    // A column that says nothing anywhere takes no room.
    const told = columns.flatMap((column, index) =>
      rows.some((row) => row[index] !== null && row[index] !== "") ? [{ column, index }] : [],
    );
    const more = rows.length - mostRows;
    return html`<table class="numbers">
      <caption>${title}</caption>
      <thead><tr>${told.map(({ column }) => html`<th scope="col">${column.name}${column.unit ? html` <span class="unit">${column.unit}</span>` : nothing}</th>`)}</tr></thead>
      <tbody>${rows.slice(0, mostRows).map(
        (row) =>
          html`<tr>${told.map(({ index }) => {
            const value = row[index] ?? null;
            return typeof value === "number"
              ? html`<td class="number">${formatNumber(value, "1").number}</td>`
              : html`<td>${value ?? html`<span aria-hidden="true">—</span><span class="unseen">${words.noValue}</span>`}</td>`;
          })}</tr>`,
      )}</tbody>
      ${more > 0 ? html`<tfoot><tr><td colspan=${told.length}>${words.moreRows(more)}</td></tr></tfoot>` : nothing}
    </table>`;
  });
}
