"use strict";
// Makes the page's pictures live: figures over time by dygraphs, linked by one moment and one zoom;
// the section painted anew at that moment. Without it the still pictures remain.
(function () {
  const data = JSON.parse(document.getElementById("data").textContent);
  const root = document.documentElement;
  const dashes = [null, [9, 4], [3, 3], [12, 3, 2, 3]];
  const graphs = [];
  let moment = 0;  // minutes after lighting
  let linking = false;

  const clock = (minutes) => {
    const whole = Math.floor(minutes), seconds = Math.round((minutes - whole) * 60);
    const hours = Math.floor(whole / 60);
    return (hours ? hours + " h " : "") + (whole % 60) + " min" + (seconds ? " " + seconds + " s" : "");
  };
  const shown = (value, unit) => {
    if (value === null || value === undefined || Number.isNaN(value)) return "–";
    const size = Math.abs(value);
    const text = value.toFixed(unit === "°C" || size >= 100 ? 0 : size >= 10 ? 1 : 2);
    return (Number(text) === 0 ? "0" : text) + (unit ? " " + unit : "");
  };
  const colour = (n) => getComputedStyle(root).getPropertyValue("--l" + (n % 6)).trim();
  const variable = (name) => getComputedStyle(root).getPropertyValue(name).trim();

  /// The place of the last time that is not after `t`.
  const at = (times, t) => {
    let low = 0, high = times.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (times[middle] <= t + 1e-9) low = middle; else high = middle - 1;
    }
    return low;
  };
  const nearest = (times, t) => {
    const i = at(times, t);
    return i + 1 < times.length && times[i + 1] - t < t - times[i] ? i + 1 : i;
  };
  /// A line's value between its moments.
  const between = (times, values, t) => {
    if (!times.length || t < times[0] - 1e-9 || t > times[times.length - 1] + 1e-9) return null;
    const i = at(times, t);
    if (i + 1 >= times.length || times[i] === t) return values[i];
    if (values[i] === null || values[i + 1] === null) return null;
    return values[i] + (values[i + 1] - values[i]) * (t - times[i]) / (times[i + 1] - times[i]);
  };

  /// The lines of a panel: each label of each run that has it, and rows of time and values.
  function table(panel, difference) {
    const lines = [];
    data.runs.forEach((run, r) => {
      const own = run.panels[panel.id];
      if (!own || (difference && r === 0)) return;
      panel.labels.forEach((label, n) => {
        if (own.s[label]) lines.push({ label, n, r, times: own.t, values: own.s[label],
          bar: !difference && own.likely && own.likely[label],
          band: !difference && own.band && own.band[label],
          name: data.runs.length > 1 ? label + ", " + run.name : label });
        const log = !difference && own.log && own.log[label];
        if (log) lines.push({ label, n, r, times: log.t, values: log.v, dots: true,
          name: label + ", logged" + (data.runs.length > 1 ? ", " + run.name : "") });
      });
    });
    if (difference) {
      const first = data.runs[0].panels[panel.id];
      for (const line of lines) {
        const base = first && first.s[line.label];
        line.values = line.values.map((value, i) => {
          const from = base ? between(first.t, base, line.times[i]) : null;
          return value === null || from === null ? null : value - from;
        });
      }
    }
    const times = [...new Set(lines.flatMap((line) => line.times))].sort((a, b) => a - b);
    const rows = times.map((t) => [t]);
    for (const line of lines) {
      let k = 0;
      // Null: another run's moment, to be bridged. NaN: there is no number, a gap.
      for (const row of rows) {
        while (k < line.times.length && line.times[k] < row[0]) ++k;
        const own = line.times[k] === row[0];
        row.push(own ? (line.values[k] === null ? NaN : line.values[k]) : null);
      }
    }
    return { lines, times, rows };
  }

  function styles(lines) {
    const series = {};
    for (const line of lines)
      series[line.name] = line.dots
        ? { color: colour(line.n), strokeWidth: 0, drawPoints: true, pointSize: 4 }
        : { color: colour(line.n), strokePattern: dashes[line.r] || (line.n > 5 ? dashes[1] : null) };
    return series;
  }
  /// As high as bars and bands, where they are higher than the lines.
  function reach(lines) {
    const most = Math.max(-Infinity, ...lines.filter((line) => line.bar).map((line) => line.bar[2]),
      ...lines.filter((line) => line.band).flatMap((line) => line.band.high.filter((value) => value !== null)));
    const own = Math.max(-Infinity, ...lines.flatMap((line) => line.values.filter((value) => value !== null)));
    return most > own ? [null, most * 1.05] : null;
  }
  const theme = () => ({ axisLineColor: variable("--soft"), gridLineColor: variable("--grid") });

  const bars = {}, bands = {};  // of each panel, lines with where their peak, and they, likely lie
  function underlay(panel) {
    const levels = panel.id === "air" ? [1] : panel.id === "plate" ? [60, 120, 175, 230] : [];
    return (canvas, area, graph) => {
      canvas.save();
      canvas.beginPath();
      canvas.rect(area.x, area.y, area.w, area.h);
      canvas.clip();
      for (const line of bands[panel.id]) {
        const edge = (values) => line.times.map((t, i) => [t, values[i]]).filter((at) => at[1] !== null)
          .map((at) => [graph.toDomXCoord(at[0]), graph.toDomYCoord(at[1])]);
        canvas.fillStyle = colour(line.n);
        canvas.globalAlpha = 0.2;
        canvas.beginPath();
        for (const at of edge(line.band.high).concat(edge(line.band.low).reverse())) canvas.lineTo(at[0], at[1]);
        canvas.fill();
        canvas.globalAlpha = 1;
      }
      canvas.lineWidth = 3;
      for (const line of bars[panel.id]) {
        const x = graph.toDomXCoord(line.bar[0]), [low, high] = [line.bar[1], line.bar[2]].map((y) => graph.toDomYCoord(y));
        canvas.strokeStyle = colour(line.n);
        canvas.beginPath();
        for (const y of [low, high]) { canvas.moveTo(x - 6, y); canvas.lineTo(x + 6, y); }
        canvas.moveTo(x, low);
        canvas.lineTo(x, high);
        canvas.stroke();
      }
      canvas.lineWidth = 1;
      canvas.strokeStyle = variable("--soft");
      canvas.setLineDash([2, 4]);
      for (const level of levels) {
        const y = Math.round(graph.toDomYCoord(level)) + 0.5;
        if (y < area.y || y > area.y + area.h) continue;
        canvas.beginPath();
        canvas.moveTo(area.x, y);
        canvas.lineTo(area.x + area.w, y);
        canvas.stroke();
      }
      canvas.restore();
    };
  }

  function swatch(line) {
    if (line.dots) return '<svg viewBox="0 0 28 10" aria-hidden="true"><circle cx="14" cy="5" r="4" fill="var(--l' + (line.n % 6) + ')"/></svg>';
    const dash = dashes[line.r] || (line.n > 5 ? dashes[1] : null);
    return '<svg viewBox="0 0 28 10" aria-hidden="true"><line x1="0" x2="28" y1="5" y2="5" stroke="var(--l' +
      (line.n % 6) + ')" stroke-width="3"' + (dash ? ' stroke-dasharray="' + dash.join(" ") + '"' : "") + "/></svg>";
  }

  function fillKey(entry) {
    const list = document.getElementById("key-" + entry.panel.id);
    list.textContent = "";
    entry.outputs = entry.lines.map((line, i) => {
      const item = document.createElement("li"), button = document.createElement("button");
      button.type = "button";
      button.setAttribute("aria-pressed", "true");
      button.innerHTML = swatch(line) + "<span></span><b></b>";
      button.querySelector("span").textContent = line.name;
      button.addEventListener("click", () => {
        const on = button.getAttribute("aria-pressed") !== "true";
        button.setAttribute("aria-pressed", String(on));
        entry.graph.setVisibility(i, on);
        show(moment);
      });
      item.append(button);
      list.append(item);
      return button.querySelector("b");
    });
  }

  function readAt(entry, t) {
    return entry.lines.map((line) => between(line.times, line.values, t));
  }

  function mark(entry) {
    if (!entry.times.length) return;
    linking = true;
    entry.graph.setSelection(nearest(entry.times, moment));
    linking = false;
    const values = readAt(entry, moment);
    entry.outputs.forEach((output, i) => { output.textContent = shown(values[i], entry.panel.unit); });
    const box = entry.box;
    box.setAttribute("aria-valuenow", moment.toFixed(1));
    box.setAttribute("aria-valuetext", clock(moment) + ": " +
      entry.lines.map((line, i) => line.name + " " + shown(values[i], entry.panel.unit)).join(", "));
  }

  const range = () => {
    let least = Infinity, most = -Infinity;
    for (const entry of graphs) if (entry.times.length) {
      least = Math.min(least, entry.times[0]);
      most = Math.max(most, entry.times[entry.times.length - 1]);
    }
    return least < most ? [least, most] : [0, 1];
  };
  let shownRange = null;
  function zoomTo(from, to) {
    const [least, most] = range();
    const span = Math.min(Math.max(to - from, 1), most - least);
    from = Math.max(least, Math.min(from, most - span));
    shownRange = [from, from + span];
    linking = true;
    for (const entry of graphs) entry.graph.updateOptions({ dateWindow: shownRange.slice() });
    linking = false;
  }
  function zoomBy(factor) {
    const [from, to] = shownRange || range();
    const centre = moment > from && moment < to ? moment : (from + to) / 2;
    zoomTo(centre - (centre - from) * factor, centre + (to - centre) * factor);
  }
  const whole = () => zoomTo(...range());

  function keys(event) {
    const [least, most] = range(), [from, to] = shownRange || range();
    const step = (to - from) / 100;
    const jump = { ArrowLeft: moment - step, ArrowRight: moment + step, ArrowDown: moment - step,
      ArrowUp: moment + step, PageDown: moment - 10 * step, PageUp: moment + 10 * step, Home: least, End: most };
    if (event.key in jump) show(jump[event.key]);
    else if (event.key === "+" || event.key === "=") zoomBy(0.5);
    else if (event.key === "-") zoomBy(2);
    else if (event.key === "0" || event.key === "Escape") whole();
    else return;
    event.preventDefault();
    if (shownRange && (moment < shownRange[0] || moment > shownRange[1]))
      zoomTo(moment - (to - from) / 2, moment + (to - from) / 2);
  }

  function build(panel) {
    const box = document.getElementById("chart-" + panel.id);
    const made = table(panel, false);
    if (!box || !made.lines.length) return;
    const entry = { panel, box, ...made };
    bars[panel.id] = made.lines.filter((line) => line.bar);
    bands[panel.id] = made.lines.filter((line) => line.band);
    // Touch is left to the page, or a finger could not scroll past; see `touch` below.
    const model = Object.assign({}, Dygraph.defaultInteractionModel);
    for (const name of ["touchstart", "touchmove", "touchend"]) delete model[name];
    model.dblclick = whole;
    entry.graph = new Dygraph(box, made.rows, Object.assign({
      labels: ["minutes"].concat(made.lines.map((line) => line.name)),
      series: styles(made.lines), legend: "never", connectSeparatedPoints: true, strokeWidth: 2,
      highlightCircleSize: 4, interactionModel: model, animatedZooms: false, includeZero: panel.unit !== "°C",
      axes: { x: { axisLabelFormatter: (t) => String(Math.round(t * 100) / 100), pixelsPerLabel: 60 },
        y: { axisLabelWidth: 42 } },
      valueRange: reach(made.lines), xlabel: "minutes after lighting", ylabel: panel.unit, xLabelHeight: 18, yLabelWidth: 18,
      underlayCallback: underlay(panel),
      highlightCallback: (event, t) => { if (!linking) show(t); },
      unhighlightCallback: () => { if (!linking) show(moment); },
      zoomCallback: (from, to) => { if (!linking) zoomTo(from, to); },
    }, theme()));
    box.tabIndex = 0;
    box.setAttribute("role", "slider");
    box.setAttribute("aria-label", panel.title + (panel.unit ? ", " + panel.unit : ""));
    box.addEventListener("keydown", keys);
    box.addEventListener("pointerdown", (event) => { if (event.pointerType !== "mouse") touch(entry, event); });
    box.addEventListener("pointermove", (event) => { if (event.pointerType !== "mouse") touch(entry, event); });
    graphs.push(entry);
    fillKey(entry);
  }
  function touch(entry, event) {
    show(entry.graph.toDataXCoord(event.clientX - entry.box.getBoundingClientRect().left));
  }

  // The section.
  const scale = data.scale;
  const heat = (t) => {
    if (t === null || t === undefined) return "#808080";
    t = Math.max(scale[0][0], Math.min(t, scale[scale.length - 1][0]));
    let i = 1;
    while (i + 1 < scale.length && scale[i][0] < t) ++i;
    const low = scale[i - 1], high = scale[i], share = (t - low[0]) / (high[0] - low[0]);
    return "rgb(" + [1, 2, 3].map((c) => Math.round(low[c] + share * (high[c] - low[c]))).join(",") + ")";
  };
  const sections = data.runs.map((run, r) => {
    const pieces = [];
    document.querySelectorAll("#stove-" + r + " g[data-c]").forEach((group) => {
      const frames = run.section.c[group.dataset.c];
      if (frames) group.querySelectorAll(".cell").forEach((cell) => {
        pieces.push({ cell, frames, i: Number(cell.dataset.i), name: group.dataset.n });
      });
    });
    return { run, pieces, reading: document.getElementById("reading-" + r), pointed: null, painted: null };
  });
  function paint(section) {
    const times = section.run.section.t;
    if (!times.length) return;
    // Frames are few: between them every piece is as warm as a straight line has it.
    const frame = at(times, moment), covered = moment >= times[0] - 0.01 && moment <= times[times.length - 1] + 0.01;
    const share = frame + 1 < times.length ? Math.max(0, (moment - times[frame]) / (times[frame + 1] - times[frame])) : 0;
    const value = (frames, i) => {
      const from = frames[frame][i];
      if (!covered || from === null || share === 0) return covered ? from : null;
      const to = frames[frame + 1][i];
      return to === null ? null : from + share * (to - from);
    };
    if (moment !== section.painted) {
      section.painted = moment;
      for (const piece of section.pieces) piece.cell.setAttribute("fill", heat(value(piece.frames, piece.i)));
    }
    if (!section.reading) return;
    if (!covered) {
      section.reading.textContent = "Not computed for this moment: this burn covers " + clock(times[0]) + " to " +
        clock(times[times.length - 1]) + " after lighting.";
      return;
    }
    const last = (name, i) => {
      const frames = section.run.section.c[name];
      return frames ? value(frames, i < 0 ? frames[0].length + i : i) : null;
    };
    const parts = [["riser gas, top", last("riser_gas_temperature", -1)], ["plate, centre", last("plate_temperature", 0)],
      ["rim", last("plate_temperature", -1)], ["barrel, top", last("barrel_temperature", 0)],
      ["foot", last("barrel_temperature", -1)]];
    const pointed = section.pointed
      ? "Pointed at: " + section.pointed.name + ", " + shown(value(section.pointed.frames, section.pointed.i), "°C") + ". "
      : "";
    section.reading.textContent = pointed + parts.filter((part) => part[1] !== null)
      .map((part) => part[0] + " " + shown(part[1], "°C")).join("; ");
  }
  sections.forEach((section, r) => {
    const picture = document.getElementById("stove-" + r);
    if (!picture) return;
    const by = new Map(section.pieces.map((piece) => [piece.cell, piece]));
    const point = (event) => { section.pointed = by.get(event.target) || null; paint(section); };
    picture.addEventListener("pointermove", point);
    picture.addEventListener("pointerdown", point);
    picture.addEventListener("pointerleave", () => { section.pointed = null; paint(section); });
  });

  // The plate's picture: a line at the moment, and the moment where it is pointed at.
  const plates = [...document.querySelectorAll("svg.plate")];
  const edgesOf = (picture) => Object.fromEntries(["from", "to", "left", "right"].map((name) => [name, Number(picture.dataset[name])]));
  function markPlate(picture) {
    const { from, to, left, right } = edgesOf(picture);
    const x = left + (moment - from) / (to - from) * (right - left);
    const line = picture.querySelector(".now");
    line.style.visibility = x >= left - 0.01 && x <= right + 0.01 ? "" : "hidden";
    line.setAttribute("x1", x);
    line.setAttribute("x2", x);
  }
  plates.forEach((picture) => {
    const point = (event) => {
      const box = picture.getBoundingClientRect(), { from, to, left, right } = edgesOf(picture);
      const x = (event.clientX - box.left) / box.width * 340;
      if (x >= left) show(from + (x - left) / (right - left) * (to - from));
    };
    picture.addEventListener("pointerdown", point);
    picture.addEventListener("pointermove", (event) => { if (event.pointerType === "mouse") point(event); });
  });

  // On paper the section stays as it is when printed.
  const painted = document.getElementById("painted");
  const slider = document.getElementById("moment"), text = document.getElementById("moment-text");
  function show(t) {
    const [least, most] = range();
    moment = Math.max(least, Math.min(t, most));
    graphs.forEach(mark);
    sections.forEach(paint);
    plates.forEach(markPlate);
    slider.value = String(moment);
    slider.setAttribute("aria-valuetext", clock(moment) + " after lighting");
    text.textContent = clock(moment) + " after lighting";
    if (painted) painted.textContent = "Painted as it is " + clock(moment) + " after lighting.";
  }

  root.classList.add("live");
  data.panels.forEach(build);
  const [least, most] = range();
  slider.min = String(least);
  slider.max = String(most);
  slider.step = String([0.1, 0.25, 0.5, 1, 2, 5, 10, 30].find((step) => step >= (most - least) / 400) || 60);
  for (const entry of graphs) {
    entry.box.setAttribute("aria-valuemin", least.toFixed(1));
    entry.box.setAttribute("aria-valuemax", most.toFixed(1));
  }
  slider.addEventListener("input", () => show(Number(slider.value)));
  document.getElementById("closer").addEventListener("click", () => zoomBy(0.5));
  document.getElementById("wider").addEventListener("click", () => zoomBy(2));
  document.getElementById("whole").addEventListener("click", whole);

  const play = document.getElementById("play");
  let playing = 0;
  play.addEventListener("click", () => {
    const on = play.getAttribute("aria-pressed") !== "true";
    play.setAttribute("aria-pressed", String(on));
    play.textContent = on ? "Hold" : "Let it burn";
    clearInterval(playing);
    if (!on) return;
    if (moment >= most - 1e-6) show(least);
    playing = setInterval(() => {
      show(moment + (most - least) / 240);
      if (moment >= most - 1e-6) play.click();
    }, 80);
  });

  const difference = document.getElementById("difference");
  if (difference) difference.addEventListener("change", () => {
    for (const entry of graphs) {
      Object.assign(entry, table(entry.panel, difference.checked));
      bars[entry.panel.id] = entry.lines.filter((line) => line.bar);
      bands[entry.panel.id] = entry.lines.filter((line) => line.band);
      entry.graph.updateOptions({ file: entry.rows, labels: ["minutes"].concat(entry.lines.map((line) => line.name)),
        series: styles(entry.lines), visibility: entry.lines.map(() => true), valueRange: reach(entry.lines) });
      fillKey(entry);
    }
    show(moment);
  });
  document.querySelectorAll("[data-dash]").forEach((line) => {
    const dash = dashes[Number(line.dataset.dash)];
    if (dash) line.setAttribute("stroke-dasharray", dash.join(" "));
  });
  document.querySelectorAll(".copy").forEach((button) => button.addEventListener("click", () => {
    const pre = button.closest("details").querySelector("pre");
    const done = () => { button.textContent = "Copied"; };
    const selected = () => {
      const selection = getSelection();
      selection.selectAllChildren(pre);
      if (document.execCommand("copy")) done();
    };
    // A page opened from a file may not be allowed the clipboard.
    if (navigator.clipboard) navigator.clipboard.writeText(pre.textContent).then(done, selected); else selected();
  }));

  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => {
    for (const entry of graphs) entry.graph.updateOptions(Object.assign({ series: styles(entry.lines) }, theme()));
  });
  addEventListener("beforeprint", () => document.querySelectorAll("details:not(.long)").forEach((each) => { each.open = true; }));
  show(data.moment);
})();
