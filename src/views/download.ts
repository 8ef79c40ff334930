/** Hands the person a file of this name, as a download. */
export function download(name: string, data: BlobPart, type: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([data], { type }));
  link.download = name;
  link.click();
  // Some browsers read the address only after the click has been told.
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
