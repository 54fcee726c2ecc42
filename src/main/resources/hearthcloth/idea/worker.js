let door;
async function opened(packed) {
  const text = await new Response(packed.stream().pipeThrough(new DecompressionStream('gzip'))).text();
  door = new Function(text + '\nreturn {plan, warm, pictures, planFile};')();
}
onmessage = async (event) => {
  const asked = event.data;
  try {
    if (asked.packed) {
      await opened(asked.packed);
      postMessage({ready: true});
    } else if (asked.warm) {
      // a small cloth nobody sees: what runs once runs sooner the second time
      try { door.warm(asked.guideline, asked.heap); } catch { /* it is told where she asks herself */ }
    } else if (asked.kind) {
      postMessage({number: asked.number, kind: asked.kind, pictures: door.pictures(asked.number, asked.kind)});
    } else if (asked.file) {
      postMessage({number: asked.number, plan: door.planFile(asked.number)});
    } else {
      const answer = door.plan(asked.guideline, asked.heap, asked.favourite, asked.unit, asked.language, (svg) => postMessage({svg}));
      postMessage({answer});
    }
  } catch (trouble) {
    postMessage({trouble: String(trouble)});
  }
};
