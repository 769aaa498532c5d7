/** The parts of the page about the work: operations, and stops for the operator. */
export const workParts = `<section id="operations" aria-labelledby="operations-title">
<h2 id="operations-title">Operations</h2>
<div class="wide" role="region" aria-labelledby="operations-title" tabindex="0">
<table class="operations">
<thead><tr>{{#if hasLines}}<th scope="col" class="number">From line</th>{{/if}}<th scope="col">Operation</th><th scope="col">Tool</th><th scope="col">Work offset</th><th scope="col" class="number">Spindle, 1/min</th>
<th scope="col" class="number">Cutting speed, {{speed}}</th><th scope="col" class="number">Feed, {{feed}}</th><th scope="col" class="number">Chip load, {{tooth}}</th>
<th scope="col" class="number">Lowest Z, {{length}}</th><th scope="col">Coolant</th>{{#if hasTimes}}<th scope="col" class="number">Time</th>{{/if}}{{#if hasVolumes}}<th scope="col" class="number">Takes away, {{volume}}</th>{{/if}}</tr></thead>
<tbody>
{{#each operations}}
<tr>{{#if hasLine}}<td class="number" data-head="From line">{{line}}</td>{{/if}}<th scope="row"><strong>{{id}}</strong>{{#if name}}<br>{{name}}{{/if}}{{#each notes}}<br><span class="small">- {{this}}</span>{{/each}}</th>
<td data-head="Tool"><span class="key">{{tool}}</span></td><td data-head="Work offset">{{offset}}</td><td class="number loose" data-head="Spindle, 1/min">{{rpm}}{{#if direction}}<br>{{direction}}{{/if}}</td>
<td class="number loose" data-head="Cutting speed, {{speed}}">{{cuttingSpeed}}</td>
<td class="number" data-head="Feed, {{feed}}">{{#each feeds}}<span class="use">{{use}}</span> {{text}}<br>{{/each}}</td>
<td class="number" data-head="Chip load, {{tooth}}">{{#each feeds}}{{tooth}}<br>{{/each}}</td>
<td class="number" data-head="Lowest Z, {{unit}}">{{lowest}}</td><td data-head="Coolant">{{coolant}}</td>{{#if hasTime}}<td class="number" data-head="Time">{{time}}</td>{{/if}}{{#if hasVolume}}<td class="number" data-head="Takes away, {{volume}}">{{removed}}</td>{{/if}}</tr>
{{/each}}
</tbody>
</table>
</div>
{{#if hasTimes}}<p><strong>Estimated time:</strong> {{time}} <span class="small">{{timeRests}}</span></p>
{{/if}}<p class="small">Chip load is feed a tooth: feed over speed and teeth. Both it and the cutting speed are worked out at the tool's whole diameter; a pointed or round tip cuts slower near its centre.</p>
</section>
<section id="stops" aria-labelledby="stops-title">
<h2 id="stops-title">Stops for the operator</h2>
{{#if stops}}
<div class="wide" role="region" aria-labelledby="stops-title" tabindex="0">
<table class="stops">
<thead><tr><th scope="col">Done</th><th scope="col" class="number">Stop</th>{{#if hasLines}}<th scope="col" class="number">At line</th>{{/if}}<th scope="col">At</th><th scope="col">What to do</th><th scope="col">The control shows</th></tr></thead>
<tbody>
{{#each stops}}
<tr><td data-head="Done"><input type="checkbox" aria-label="Stop {{number}} is done"></td><th scope="row" class="number">{{number}}</th>{{#if hasLine}}<td class="number" data-head="At line">{{line}}</td>{{/if}}<td data-head="At">{{at}}</td><td data-head="What to do">{{#if optional}}<strong>Optional stop.</strong> {{/if}}{{text}}</td><td data-head="The control shows">{{#if message}}<code>{{message}}</code>{{else}}nothing{{/if}}</td></tr>
{{/each}}
</tbody>
</table>
</div>
{{else}}
<p>None: the program runs from start to end by itself.</p>
{{/if}}
</section>
`;
