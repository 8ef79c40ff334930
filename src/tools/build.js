import { buildApp, needsBuild } from "./app.js";

// `npm run build` always builds; the test run and the bench pass --if-stale.
if (!process.argv.includes("--if-stale") || needsBuild()) {
  console.log("Spanwise: building the app into dist …");
  await buildApp();
  console.log("Spanwise: built. The files in dist work under any path of any static web server.");
}
