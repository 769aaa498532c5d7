// The least that a script could do: parse the whole job, print modal words with three decimals, write once. It checks nothing.
import { readFileSync, writeFileSync } from "node:fs";

const [input, output] = process.argv.slice(2);
const job = JSON.parse(readFileSync(input, "utf8"));
const blocks = ["%", "G21 G90 G17 G94"];
let x, y, z, feed, motion;
for (const operation of job.operations) {
  blocks.push(`T${operation.tool} M6`, `S${operation.spindle.rpm} M3`);
  for (const move of operation.moves) {
    const words = [];
    const code = move.line ? "G1" : "G0";
    const target = move.line ?? move.rapid;
    if (code !== motion) words.push((motion = code));
    if (target.x !== undefined && target.x !== x) words.push(`X${(x = target.x).toFixed(3)}`);
    if (target.y !== undefined && target.y !== y) words.push(`Y${(y = target.y).toFixed(3)}`);
    if (target.z !== undefined && target.z !== z) words.push(`Z${(z = target.z).toFixed(3)}`);
    if (move.feed !== undefined && move.feed !== feed) words.push(`F${(feed = move.feed).toFixed(1)}`);
    blocks.push(words.join(" "));
  }
}
blocks.push("M5", "M30", "%", "");
writeFileSync(output, blocks.join("\n"));
