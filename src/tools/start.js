import { buildApp, needsBuild, serveApp } from "./app.js";

const usualPort = 4173;

if (needsBuild()) {
  console.log("Spanwise: building the app (a few seconds) …");
  await buildApp();
}
const { url, port, close } = await serveApp({ port: usualPort });
if (port !== usualPort) console.log(`Spanwise: port ${usualPort} is taken by another program, so it uses ${port}.`);
console.log(`Spanwise is open at ${url}
It is served from this computer to this computer only. Stop it with Ctrl-C.`);

process.once("SIGINT", async () => {
  await close();
  console.log("\nSpanwise: stopped.");
  process.exit(0);
});
