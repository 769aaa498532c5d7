/** The parts of the page about the set-up: stock and zero, work offsets, machine, rack and tools. */
export const jobParts = `<section id="set-up" aria-labelledby="set-up-title">
<h2 id="set-up-title">Stock and work zero</h2>
{{#if drawing}}
<div class="wide picture" role="region" aria-label="Drawing of the set-up" tabindex="0">{{drawing}}</div>
<p><strong>{{zero}}</strong> {{#if material}}Stock of {{material}}. {{/if}}All lengths on this sheet are in {{system}}{{#unless isMetric}} (1 in is 25.4 mm){{/unless}}.</p>
{{else}}
<p>No stock is stated: nothing is drawn, and rapids are not checked against it. All lengths on this sheet are in {{system}}.</p>
{{/if}}
{{#if boxes}}
<div class="wide" role="region" aria-label="Stock and fixtures" tabindex="0">
<table>
<thead><tr><th scope="col">What</th><th scope="col" class="number">X, {{length}}</th><th scope="col" class="number">Y, {{length}}</th>
<th scope="col" class="number">Z, {{length}}</th><th scope="col" class="number">Size, {{length}}</th></tr></thead>
<tbody>
{{#each boxes}}
<tr><th scope="row">{{#if letter}}<span class="key">{{letter}}</span> {{/if}}{{name}}</th>{{#each places}}<td class="number" data-head="{{head}}">{{text}}</td>{{/each}}</tr>
{{/each}}
</tbody>
</table>
</div>
{{/if}}
<div class="wide" role="region" aria-label="Work offsets" tabindex="0">
<table>
<thead><tr><th scope="col">Work offset</th><th scope="col">For</th><th scope="col" class="number">Its zero in machine coordinates, {{length}}</th>
<th scope="col" class="number">All motion X, {{length}}</th><th scope="col" class="number">Y, {{length}}</th><th scope="col" class="number">Z, {{length}}</th></tr></thead>
{{#each offsets}}
<tbody class="together">
<tr><th scope="row"><span class="key">{{number}}</span> {{word}}</th><td data-head="For">{{operations}}</td><td class="number" data-head="Its zero, {{length}}">{{#if origin}}{{origin}}{{else}}<span class="fill">X</span><span class="fill">Y</span><span class="fill">Z</span>{{/if}}</td>{{#each extents}}<td class="number" data-head="{{head}}">{{text}}</td>{{/each}}</tr>
{{#if machine}}<tr><th scope="row" class="small">the same in machine coordinates</th><td></td><td></td>{{#each machine}}<td class="number" data-head="{{head}}">{{text}}</td>{{/each}}</tr>{{/if}}
</tbody>
{{/each}}
</table>
</div>
<p>Clearance, the height of safe travel: Z{{clearance}} {{length}}.</p>
{{#if machineFacts}}
<h3>Machine</h3>
<dl>
{{#each machineFacts}}<div><dt>{{name}}</dt><dd>{{value}}</dd></div>
{{/each}}
</dl>
{{/if}}
</section>
<section id="tools" aria-labelledby="tools-title">
<h2 id="tools-title">Tools</h2>
{{#if holds}}<p>{{holds}}</p>{{/if}}
{{#if rack}}
<h3>Rack</h3>
<ol class="rack" aria-label="Pockets">
{{#each rack}}<li>pocket {{pocket}}<strong>{{tool}}</strong></li>
{{/each}}
</ol>
{{/if}}
<div class="wide" role="region" aria-labelledby="tools-title" tabindex="0">
<table class="tools">
<thead><tr><th scope="col">Ready</th><th scope="col">Tool</th>{{#if rack}}<th scope="col">Pocket</th>{{/if}}<th scope="col">Length offset</th><th scope="col">Kind</th>
<th scope="col" class="number">Diameter, {{length}}</th><th scope="col" class="number">Flutes</th><th scope="col" class="number">Length, {{length}}</th>
<th scope="col" class="number">Stick-out, {{length}}</th><th scope="col" class="number">Flute length, {{length}}</th><th scope="col" class="number">At most, 1/min</th>{{#if hasTimes}}<th scope="col" class="number">Time</th>{{/if}}</tr></thead>
<tbody>
{{#each tools}}
<tr><td data-head="Ready"><input type="checkbox" aria-label="Tool {{number}} is ready"></td><th scope="row"><span class="key">{{number}}</span></th>{{#if pocket}}<td data-head="Pocket">{{pocket}}</td>{{/if}}<td data-head="Length offset">{{offset}}</td>
<td class="words" data-head="Kind">{{kind}}{{#if description}}<br>{{description}}{{/if}}{{#if shape}}<br><span class="small">{{shape}}</span>{{/if}}</td>
<td class="number" data-head="Diameter, {{unit}}">{{diameter}}</td><td class="number" data-head="Flutes">{{flutes}}</td>
<td class="number" data-head="Length, {{unit}}">{{#if reach}}{{reach}}{{else}}<span class="fill"></span>{{/if}}{{#if lengthNote}}<br><span class="small">{{lengthNote}}</span>{{/if}}</td>
<td class="number" data-head="Stick-out, {{unit}}">{{stickOut}}</td><td class="number" data-head="Flute length, {{unit}}">{{fluteLength}}</td><td class="number" data-head="At most, 1/min">{{maxRpm}}</td>{{#if hasTime}}<td class="number" data-head="Time">{{time}}</td>{{/if}}</tr>
{{/each}}
</tbody>
</table>
</div>
{{#if reaches}}
<h3 id="reach-title">How far each tool goes</h3>
<div class="wide" role="region" aria-labelledby="reach-title" tabindex="0">
<table>
<thead><tr><th scope="col">Tool</th><th scope="col">Work offset</th><th scope="col" class="number">At feed X, {{length}}</th>
<th scope="col" class="number">Y, {{length}}</th><th scope="col" class="number">Z, {{length}}</th><th scope="col" class="number">All motion X, {{length}}</th>
<th scope="col" class="number">Y, {{length}}</th><th scope="col" class="number">Z, {{length}}</th></tr></thead>
<tbody>
{{#each reaches}}
<tr><th scope="row"><span class="key">{{tool}}</span></th><td data-head="Work offset">{{offset}}</td>{{#each extents}}<td class="number" data-head="{{head}}">{{text}}</td>{{/each}}</tr>
{{/each}}
</tbody>
</table>
</div>
<p class="small">Places of the tip at the tool's centre, in work coordinates: the tool's edge goes its radius further in X and Y.</p>
{{/if}}
</section>
`;
