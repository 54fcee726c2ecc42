// The pages of docs as a small site: each page in one frame, links between pages kept, links to files of the sources told as
// words. Stops at a link that leads nowhere.
import { existsSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { IdAttributePlugin } from "@11ty/eleventy";

const ROOMS = [
  ["Makers", [["Get it", "/installing.html"], ["Start", "/making/start.html"], ["Photograph", "/making/photograph.html"],
    ["Cut", "/making/cut.html"], ["Sew", "/making/sew.html"], ["Tie", "/making/tie.html"], ["Everything", "/using.html"],
    ["Kept safe", "/safety.html"]]],
  ["Teachers and studios", [["A class", "/teaching.html"], ["Kits", "/kits.html"], ["A studio", "/studio.html"]]],
  ["Developers", [["Developing", "/developing.html"], ["Architecture", "/architecture.html"],
    ["Releasing", "/releasing.html"], ["What changed", "/changelog.html"]]],
];

/** A link as written in a page of docs, as it is on the site; empty where it leads into the sources. */
function onSite(target, page) {
  if (/^([a-z]+:|#|\/)/.test(target)) return target;
  const [path, anchor] = target.split("#");
  const file = normalize(join("docs", dirname(page.inputPath.replace(/^\.\/docs\//, "")), path));
  const up = "../".repeat(page.url.split("/").length - 2);
  if (file === "CHANGELOG.md") return up + "changelog.html";
  if (!file.startsWith("docs/")) return "";
  if (file.endsWith(".md")) return path.replace(/\.md$/, ".html") + (anchor ? "#" + anchor : "");
  return /\.(png|svg|jpg)$/.test(file) ? path : "";
}

function relinked(html, page) {
  return html
    .replace(/<a href="([^"]*)">([\s\S]*?)<\/a>/g, (whole, target, words) => {
      const there = onSite(target, page);
      return there ? `<a href="${there}">${words}</a>` : words;
    })
    .replace(/<table>/g, '<div class="wide" tabindex="0"><table>')
    .replace(/<\/table>/g, "</table></div>");
}

export default function (config) {
  config.addPlugin(IdAttributePlugin);
  config.addPassthroughCopy({ "docs/pictures": "pictures", "site/site.css": "site.css",
    "src/main/resources/web/mark.svg": "mark.svg", "src/main/resources/hearthcloth/draw/letters/*.ttf": "letters" });
  // The changelog stands beside the pages of docs here, above them in the repository.
  config.addTemplate("changelog.md", readFileSync("CHANGELOG.md", "utf8").replaceAll("](docs/", "]("));
  config.addGlobalData("layout", "page.njk");
  config.addGlobalData("rooms", ROOMS);
  config.addGlobalData("permalink", () => (data) => `${data.page.filePathStem}.html`);
  config.addGlobalData("eleventyComputed.title", () => (data) =>
    (/^# (.*)$/m.exec(data.page.rawInput ?? "") ?? ["", "Hearthcloth"])[1]);
  config.addFilter("relinked", function (html) { return relinked(html, this.page); });
  config.addFilter("up", (url) => "../".repeat(url.split("/").length - 2));
  config.on("eleventy.after", ({ results }) => {
    const dead = [];
    for (const { content, outputPath } of results) {
      for (const [, target] of content.matchAll(/(?:href|src)="([^"#]*)[^"]*"/g)) {
        if (target && !/^[a-z]+:/.test(target) && !existsSync(join(dirname(outputPath), target))) {
          dead.push(`${outputPath}: ${target}`);
        }
      }
    }
    if (dead.length) throw new Error("Links that lead nowhere:\n" + dead.join("\n"));
  });
  return { dir: { input: "docs", includes: "../site/layouts", data: "../site/data", output: "target/site" },
    markdownTemplateEngine: false, templateFormats: ["md"] };
}
