/** The page of a comparison as a Handlebars template; what is written with two braces is escaped. */
import { pageHead } from "../page-head.ts";

export const pageTemplate = `${pageHead("{{job}}: {{names}}")}<body>
<a class="skip" href="#programs">To the programs</a>
<header>
<h1>One job under several dialects</h1>
<p class="job">{{job}}</p>
<nav aria-label="Parts of this page">
<ul>
<li><a href="#programs">Programs</a></li>
{{#each pairs}}
<li><a href="#{{id}}">{{a}} and {{b}}</a></li>
{{/each}}
<li><a href="#cautions">Before one of them runs</a></li>
</ul>
</nav>
</header>
<main>
<section id="programs" aria-labelledby="programs-title">
<h2 id="programs-title">Programs</h2>
<div class="scroll" role="region" aria-labelledby="programs-title" tabindex="0">
<table>
<thead>
<tr><th scope="col">Dialect</th><th scope="col">Verdict</th><th scope="col" class="number">Bytes</th>
<th scope="col" class="number">Lines</th><th scope="col" class="number">Steps</th><th scope="col" class="number">Dwells, s</th>
<th scope="col" class="number">Dwells by turns</th><th scope="col" class="number">Waits</th></tr>
</thead>
<tbody>
{{#each programs}}
<tr><th scope="row"><span class="letter">{{letter}}</span> {{name}}<br><span class="small">{{title}}</span></th>
<td class="{{state}}">{{verdict}}</td>{{#each sizes}}<td class="number">{{this}}</td>{{/each}}</tr>
{{/each}}
</tbody>
</table>
</div>
<p class="small">Dwells in fixed cycles are not counted, and a wait lasts as long as it lasts. Cutting time is not worked out.</p>
{{#if isAlone}}<p><strong>There are no two programs to compare.</strong></p>{{/if}}
{{#each found}}
<h3>What was found under {{letter}}, {{name}}</h3>
<ul class="found">
{{#each findings}}
<li><strong class="{{severity}}">{{severity}}</strong> <code>{{rule}}</code><br>{{message}}
{{#if place}}<br><span class="small">at {{place}}</span>{{/if}}
{{#if fix}}<br><span class="small">Way out: {{fix}}</span>{{/if}}
{{#if key}}<br><span class="small">Key: {{key}}</span>{{/if}}</li>
{{/each}}
</ul>
{{/each}}
</section>
{{#each pairs}}
<section id="{{id}}" aria-labelledby="{{id}}-title">
<h2 id="{{id}}-title"><span class="letter">{{a}}</span> {{first}} and <span class="letter">{{b}}</span> {{second}}</h2>
<p>{{summary}}</p>
{{#each levels}}
<section class="level" aria-labelledby="{{id}}-{{level}}">
<h3 id="{{id}}-{{level}}">{{title}}</h3>
{{#if isEmpty}}
<p>Nothing.</p>
{{else}}
<div class="scroll" role="region" aria-labelledby="{{id}}-{{level}}" tabindex="0">
<table class="overview">
<thead><tr><th scope="col" class="number">No.</th><th scope="col">What</th><th scope="col" class="number">Found at</th><th scope="col">Because of</th></tr></thead>
<tbody>
{{#each groups}}
<tr><td class="number">{{number}}</td><th scope="row"><a href="#{{id}}">{{what}}</a>{{#if words}} <code>{{words}}</code>{{/if}}</th><td class="number">{{places}}</td><td><code>{{because}}</code></td></tr>
{{/each}}
</tbody>
</table>
</div>
{{#each groups}}
<article id="{{id}}" class="group {{level}}" aria-labelledby="{{id}}-title" tabindex="-1">
<h4 id="{{id}}-title"><span class="mark">{{level}}</span> {{number}}. {{what}}{{#if words}} <code>{{words}}</code>{{/if}} <span class="count">{{places}}</span></h4>
<div class="sides">
{{#each sides}}
<figure>
<figcaption><span class="letter">{{letter}}</span> {{at}}</figcaption>
{{#if isEmpty}}<p class="none">nothing</p>{{else}}<pre>{{text}}</pre>{{/if}}
{{#if said}}<ul class="said">{{#each said}}<li>{{this}}</li>{{/each}}</ul>{{/if}}
</figure>
{{/each}}
</div>
{{#if hasKeys}}
<table class="because">
<thead><tr><th scope="col">Because of</th><th scope="col">{{a}} says</th><th scope="col">{{b}} says</th></tr></thead>
<tbody>
{{#each keys}}
<tr><th scope="row"><code>{{key}}</code></th>{{#each sides}}<td>{{value}}{{#if at}}<br><span class="small">{{at}}</span>{{/if}}</td>{{/each}}</tr>
{{/each}}
</tbody>
</table>
{{else}}
<p><strong>No key accounts for it: look at the lines.</strong></p>
{{/if}}
{{#if elsewhere}}<p class="small">First places: {{elsewhere}}.</p>{{/if}}
</article>
{{/each}}
{{/if}}
</section>
{{/each}}
{{#if hasListing}}
<section aria-labelledby="{{id}}-listing">
<h3 id="{{id}}-listing">Side by side</h3>
<p>The beginning of both programs, step by step; numbers lead to the differences above.
{{#if left}}Left out: {{left}}.{{else}}Nothing is left out.{{/if}}
<span class="paper">On paper the first 60 rows stand.</span></p>
<div class="scroll" role="region" aria-labelledby="{{id}}-listing" tabindex="0">
<table class="listing">
<thead><tr><th scope="col" class="number">Line of {{a}}</th><th scope="col">{{a}} {{first}}</th>
<th scope="col" class="number">Line of {{b}}</th><th scope="col">{{b}} {{second}}</th><th scope="col">Differs in</th></tr></thead>
<tbody>
{{#each listing}}
<tr class="{{level}}"><td class="number">{{firstLine}}</td><td><pre>{{first}}</pre></td><td class="number">{{secondLine}}</td><td><pre>{{second}}</pre></td>
<td class="links">{{mark}}{{#each links}} <a href="#{{id}}">{{number}}</a>{{/each}}</td></tr>
{{/each}}
</tbody>
</table>
</div>
</section>
{{/if}}
</section>
{{/each}}
</main>
<footer id="cautions" aria-labelledby="cautions-title">
<h2 id="cautions-title">Before one of them runs</h2>
<ul>
{{#each cautions}}
<li>{{this}}</li>
{{/each}}
</ul>
</footer>
</body>
</html>
`;
