/** Light or dark: as the system has it, unless a person chose. Kept for the next visit where the browser allows it. */
export const themes = ["system", "light", "dark"] as const;
export type Theme = (typeof themes)[number];

const key = "spanwise-colours";

/** The choice of the last visit. */
export function keptTheme(): Theme {
  try {
    return themes.find((theme) => theme === localStorage.getItem(key)) ?? "system";
  } catch {
    return "system";
  }
}

/** Shows a theme and keeps it. */
export function applyTheme(theme: Theme): void {
  if (theme === "system") delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme;
  try {
    localStorage.setItem(key, theme);
  } catch {
    // Without storage the choice holds for this visit.
  }
}
