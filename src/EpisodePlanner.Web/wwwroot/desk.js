// What script adds: copying written pages, single keys between pages, larger pictures, and pages that follow what others
// change. Every page works without it.
(() => {
  const said = (words) => {
    const line = document.createElement('p');
    line.className = 'said';
    line.setAttribute('role', 'status');
    line.textContent = words;
    document.querySelector('main').prepend(line);
    setTimeout(() => line.remove(), 6000);
  };

  const copy = {
    markdown: async () => navigator.clipboard.writeText(document.getElementById('markdown').value),
    rich: async () => {
      const article = document.getElementById('written');
      const types = {
        'text/html': new Blob([article.innerHTML], { type: 'text/html' }),
        'text/plain': new Blob([article.innerText], { type: 'text/plain' }),
      };
      await navigator.clipboard.write([new ClipboardItem(types)]);
    },
  };

  const offerCopies = () => {
    for (const button of document.querySelectorAll('[data-copy]')) {
      button.hidden = false;
      button.addEventListener('click', async () => {
        try {
          await copy[button.dataset.copy]();
          said('Copied.');
        } catch {
          said('The browser did not allow it. Select the text below and copy it by hand.');
          document.getElementById('markdown').closest('details').open = true;
        }
      });
    }
  };

  // Pictures grow and shrink inside their frame: by buttons, and by + - 0 where the frame has the focus.
  const offerZoom = () => {
    for (const figure of document.querySelectorAll('figure.wide')) {
      const frame = figure.querySelector('.scroll');
      const svg = frame.querySelector('svg');
      let zoom = 1;
      const scale = (to) => {
        zoom = Math.min(4, Math.max(1, to));
        svg.style.width = `${zoom * 100}%`;
        svg.style.minWidth = zoom > 1 ? 'none' : '';
        smaller.disabled = zoom === 1;
        larger.disabled = zoom === 4;
      };
      const button = (words, to) => {
        const made = document.createElement('button');
        made.type = 'button';
        made.className = 'small';
        made.textContent = words;
        made.addEventListener('click', () => scale(to()));
        return made;
      };
      const smaller = button('Smaller', () => zoom / 1.5);
      const larger = button('Larger', () => zoom * 1.5);
      const row = document.createElement('div');
      row.className = 'zoom';
      row.append(larger, smaller);
      figure.prepend(row);
      scale(1);
      frame.addEventListener('keydown', (key) => {
        const to = { '+': zoom * 1.5, '-': zoom / 1.5, '0': 1 }[key.key];
        if (to && !key.ctrlKey && !key.metaKey) {
          key.preventDefault();
          scale(to);
        }
      });
    }
  };

  // An open page follows what is changed elsewhere, unless something is being typed or looked at by keyboard: then it says so.
  const main = () => document.querySelector('main');
  let typed = false;
  document.addEventListener('input', () => { typed = true; });

  const showAnew = async (address) => {
    const answer = await fetch(address, { headers: { Accept: 'text/html' } });
    if (!answer.ok) {
      return;
    }
    const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
    const fresh = page.querySelector('main');
    const open = new Set([...main().querySelectorAll('details[open] > summary')].map((summary) => summary.textContent));
    for (const summary of fresh.querySelectorAll('details > summary')) {
      summary.parentElement.open ||= open.has(summary.textContent);
    }
    document.title = page.title;
    main().replaceWith(fresh);
    offerCopies();
    offerZoom();
  };

  const isBusy = () => typed || main().contains(document.activeElement) && document.activeElement !== main();

  const follow = () => {
    const live = main().dataset.live;
    if (!live) {
      return;
    }
    let shown;
    const look = async () => {
      if (document.hidden) {
        return;
      }
      try {
        const answer = await fetch(live);
        const mark = answer.ok ? await answer.text() : shown;
        const isOther = shown !== undefined && mark !== shown;
        shown = mark;
        if (isOther && isBusy()) {
          said('The plan has changed meanwhile. Load the page again to see it.');
        } else if (isOther) {
          await showAnew(location.href);
        }
      } catch {
        // The server is away for a moment; the next look may find it.
      }
    };
    look();
    setInterval(look, 15000);
    document.addEventListener('visibilitychange', look);
  };

  offerCopies();
  offerZoom();
  follow();
  const again = document.querySelector('[data-again] a');
  if (again) {
    showAnew(again.href).catch(() => {});
  }

  // A form that was sent once is not sent again by a second tap.
  document.addEventListener('submit', (sending) => {
    const form = sending.target;
    if (form.dataset.sent) {
      sending.preventDefault();
    }
    form.dataset.sent = 'yes';
    setTimeout(() => delete form.dataset.sent, 4000);
  });

  // The digits 1 to 9, then 0, lead to the pages of the menu, unless something is being typed.
  const pages = [...document.querySelectorAll('.masthead nav a')];
  document.addEventListener('keydown', (key) => {
    const typing = key.target.closest('input, textarea, select, [contenteditable]');
    if (!typing && !key.defaultPrevented && !key.ctrlKey && !key.metaKey && !key.altKey && key.key >= '0' && key.key <= '9') {
      pages[(Number(key.key) + 9) % 10]?.click();
    }
  });
})();
