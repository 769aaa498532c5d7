import { pageHead } from "../../page-head.ts";

/** The page of a plot as a Handlebars template; what is written with two braces is escaped. The data stand where the mark is. */
export const dataMark = "<!-- data -->";

/** Where scripts are off, what is for paper is shown on the screen. */
const paperWithoutScript = `<noscript><style>.paper { display: block !important; } .stage, .on-screen { display: none !important; }</style></noscript>
`;

export const pageTemplate = `${pageHead("{{name}}", "'sha256-{{hash}}'", paperWithoutScript)}<body>
<a class="skip" href="#line">To the steps</a>
<header>
<h1>{{title}}</h1>
<p class="status {{state}}">{{status}}</p>
<p class="small">{{counted}}</p>
</header>
<main>
<div class="stage">
<div id="view" tabindex="0" role="application" aria-label="Picture of the motions" aria-describedby="view-help">
<canvas id="motions" aria-hidden="true"></canvas><canvas id="over" aria-hidden="true"></canvas>
<p id="loading" role="status">Loading</p>
</div>
<p id="view-help" class="small">Drag or arrow keys turn, with Shift they shift; wheel, pinch, + and - zoom; 1 to 4 choose a view.</p>
<div class="bar" role="group" aria-label="Views">
<button type="button" data-view="top">Top</button>
<button type="button" data-view="front">Front</button>
<button type="button" data-view="right">Right</button>
<button type="button" data-view="oblique">Oblique</button>
<button type="button" id="fit-work">Fit the work</button>
<button type="button" id="fit-all">Fit all</button>
<button type="button" data-zoom="1.25" aria-label="Larger">+</button>
<button type="button" data-zoom="0.8" aria-label="Smaller">&minus;</button>
<label for="colour-by">Colour by</label>
<select id="colour-by"><option value="tool">tool</option><option value="operation">operation</option><option value="kind">kind of motion</option></select>
</div>
<label for="line" class="small">{{lineIs}}</label>
<input type="range" id="line" min="1" max="1" step="1" value="1">
<div class="bar" role="group" aria-label="Steps">
<button type="button" id="to-start">Start</button>
<button type="button" id="step-back">Back</button>
<button type="button" id="play">Play</button>
<button type="button" id="step-on">Step</button>
<button type="button" id="to-end">End</button>
<label for="speed">Lines a second</label>
<select id="speed"><option>1</option><option>4</option><option selected>20</option><option>200</option><option>2000</option><option>20000</option></select>
<label for="line-number">Line</label>
<input type="number" id="line-number" min="1" max="1" value="1">
</div>
<p id="place">The place of the tool is not known yet.</p>
</div>
<div class="beside">
<section class="on-screen" aria-labelledby="listing-title">
<h2 id="listing-title">{{listingTitle}}</h2>
<ol id="listing" tabindex="0" role="list" aria-labelledby="listing-title"></ol>
<p id="said" class="said" role="status"></p>
</section>
<section class="on-screen" aria-labelledby="legend-title">
<h2 id="legend-title">Legend</h2>
<ul id="legend" role="list" tabindex="0" aria-labelledby="legend-title"></ul>
</section>
<div class="paper">
{{{drawing}}}
<h2>Tools and operations</h2>
<ul>
{{#each tools}}
<li><svg class="sample" viewBox="0 0 44 12" aria-hidden="true"><path d="M0 6h44" style="fill:none;stroke:{{ink}};stroke-width:2.5;stroke-dasharray:{{dashes}}"/></svg> {{text}}<br><span class="small">{{operations}}</span></li>
{{/each}}
</ul>
</div>
{{#if findings}}
<section aria-labelledby="findings-title">
<h2 id="findings-title">Findings</h2>
<ol id="findings" role="list">
{{#each findings}}
<li><button type="button" data-mark="{{index}}" class="{{severity}}"><span class="mark">{{number}}</span> <span class="severity">{{severity}}</span> <code>{{rule}}</code> {{message}}{{#if place}} <span class="small">{{place}}</span>{{/if}}</button></li>
{{/each}}
</ol>
</section>
{{/if}}
<section aria-labelledby="extents-title">
<h2 id="extents-title">Extents, {{units}}</h2>
<table>
<thead><tr><td></td><th scope="col">X</th><th scope="col">Y</th><th scope="col">Z</th></tr></thead>
<tbody>
{{#each extents}}<tr><th scope="row">{{name}}</th>{{#each places}}<td>{{this}}</td>{{/each}}</tr>
{{/each}}
</tbody>
</table>
</section>
{{#if remarks}}
<section aria-labelledby="remarks-title">
<h2 id="remarks-title">About this picture</h2>
<ul class="dashed">
{{#each remarks}}
<li>{{this}}</li>
{{/each}}
</ul>
</section>
{{/if}}
<section aria-labelledby="cautions-title">
<h2 id="cautions-title">Before anything runs</h2>
<ul class="dashed">
{{#each cautions}}
<li>{{this}}</li>
{{/each}}
</ul>
</section>
</div>
</main>
${dataMark}
<script>{{{script}}}</script>
</body>
</html>
`;
