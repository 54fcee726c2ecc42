package hearthcloth.sew;

import hearthcloth.cloth.Step;

/** One seam: the step of the cloth, for drawings, and what to do. */
public record SeamTask(Step step, Task task) {}
