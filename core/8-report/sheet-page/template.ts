/** The page of a set-up sheet as a Handlebars template; what is written with two braces is escaped. */
import { pageHead } from "../page-head.ts";
import { jobParts } from "./template-job.ts";
import { workParts } from "./template-work.ts";

const findingsPart = `<section id="findings" aria-labelledby="findings-title">
<h2 id="findings-title">What was found</h2>
{{#if hasFindings}}
<ul class="found">
{{#each findings}}
<li><strong class="severity {{severity}}">{{severity}}</strong> <code>{{rule}}</code><br>{{message}}
{{#if place}}<br><span class="small">at {{place}}</span>{{/if}}
{{#if fix}}<br><span class="small">Way out: {{fix}}</span>{{/if}}
{{#if key}}<br><span class="small">Key: {{key}}</span>{{/if}}</li>
{{/each}}
</ul>
{{else}}
<p>Nothing.</p>
{{/if}}
</section>
`;

const cautionsPart = `<section id="cautions" aria-labelledby="cautions-title">
<h2 id="cautions-title">Cautions</h2>
<ul>
{{#each cautions}}
<li>{{this}}</li>
{{/each}}
</ul>
</section>
`;

/** The whole page. */
export const sheetTemplate = `${pageHead("Set-up sheet: {{title}}")}<body>
<a class="skip" href="#goes-with">To the sheet</a>
<header>
<p class="kind">Set-up sheet</p>
<h1>{{title}}</h1>
<p class="for">for {{machine}}{{#if isArchetype}} <strong>(an archetype: no machine is stated)</strong>{{/if}}</p>
</header>
<main>
{{#if refused}}
<section class="refused" aria-labelledby="refused-title">
<h2 id="refused-title">Not proved</h2>
<p>There is no program for this job. Do not set up by this sheet, and do not run anything that was made from the job before: mend what was found, and print a new sheet.</p>
</section>
${findingsPart}
{{/if}}
<section id="goes-with" aria-labelledby="goes-with-title">
<h2 id="goes-with-title">This sheet goes with</h2>
<div class="wide" role="region" aria-labelledby="goes-with-title" tabindex="0">
<table class="files">
<thead><tr><th scope="col">What</th><th scope="col">File</th><th scope="col">SHA-256 of its bytes</th></tr></thead>
<tbody>
{{#each files}}
<tr class="{{role}}"><th scope="row">{{what}}</th><td data-head="File">{{file}}{{#if more}}<br><span class="small">{{more}}</span>{{/if}}</td>
<td data-head="SHA-256"><code class="hash">{{#each parts}}<span>{{this}}</span>{{/each}}</code></td></tr>
{{/each}}
</tbody>
</table>
</div>
{{#if program}}
<p>Whether a program file is the one of this sheet: <code>sha256sum {{program}}</code> gives the same number.</p>
{{/if}}
{{#if options}}<p>Made with {{#each options}}<code>{{this}}</code> {{/each}}</p>{{/if}}
</section>
{{#if hasPlan}}
${jobParts}
${workParts}
{{/if}}
{{#unless refused}}
${findingsPart}
{{/unless}}
{{#if hasChecks}}
<section id="before" aria-labelledby="before-title">
<h2 id="before-title">Before the start</h2>
<ol class="ticks">
{{#each before}}
{{> step}}
{{/each}}
</ol>
</section>
<section id="prove-out" aria-labelledby="prove-out-title">
<h2 id="prove-out-title">Proving out</h2>
<ol class="ticks">
{{#each proveOut}}
{{> step}}
{{/each}}
</ol>
</section>
{{/if}}
{{#if backplot}}
<section id="picture" aria-labelledby="picture-title">
<h2 id="picture-title">What the tools do</h2>
<figure class="backplot">{{backplot}}
<figcaption><ul>
{{#each drawnTools}}
<li><svg viewBox="0 0 200 30" width="50" height="8" aria-hidden="true"><line x1="0" y1="15" x2="200" y2="15" stroke="{{ink}}" stroke-width="14" stroke-dasharray="{{dashes}}"/></svg> tool {{number}} {{description}}</li>
{{/each}}
</ul>
<p>Thin dashes are rapids. The picture shows where the tool's tip is told to go, and proves nothing.</p></figcaption></figure>
</section>
{{/if}}
${cautionsPart}
{{#if hasChecks}}
<section class="signed" aria-label="Signed">
<p><span>Set up by</span><span class="blank"></span><span>Date</span><span class="blank short"></span></p>
<p><span>Proved out by</span><span class="blank"></span><span>Date</span><span class="blank short"></span></p>
</section>
{{/if}}
</main>
</body>
</html>
`;

/** One step to tick off; where it has several parts, each of them. */
export const stepTemplate = `<li>{{#if each}}<p>{{text}}</p><ul>{{#each each}}<li><label><input type="checkbox"> <span>{{this}}</span></label></li>{{/each}}</ul>{{else}}<label><input type="checkbox"> <span>{{text}}</span></label>{{/if}}</li>
`;
