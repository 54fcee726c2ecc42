let door;
async function opened(packed) {
  const text = await new Response(packed.stream().pipeThrough(new DecompressionStream('gzip'))).text();
  door = new Function(text + '\nreturn {plan, warm, pictures, planFile};')();
}
let isAsked = false;
// small cloths nobody sees: what runs once runs sooner the second time; between two of them a question is heard
async function warmed(guideline, heaps) {
  for (const heap of heaps) {
    for (let step = 0; step < 3 && !isAsked; step++) {
      try { door.warm(guideline, heap, step); } catch { return; /* it is told where she asks herself */ }
      await new Promise((next) => { setTimeout(next); });
    }
  }
}
onmessage = async (event) => {
  const asked = event.data;
  try {
    if (asked.packed) {
      await opened(asked.packed);
      postMessage({ready: true});
    } else if (asked.warm) {
      await warmed(asked.guideline, asked.heaps);
    } else if (asked.kind) {
      postMessage({number: asked.number, kind: asked.kind, pictures: door.pictures(asked.number, asked.kind)});
    } else if (asked.file) {
      postMessage({number: asked.number, plan: door.planFile(asked.number)});
    } else {
      isAsked = true;
      const answer = door.plan(asked.guideline, asked.heap, asked.favourite, asked.unit, asked.language, (svg) => postMessage({svg}));
      postMessage({answer});
    }
  } catch (trouble) {
    postMessage({trouble: String(trouble)});
  }
};
