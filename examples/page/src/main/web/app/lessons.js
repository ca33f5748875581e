// The lessons: change a number, and the sum and its picture follow; exercises check an answer.

const lesson = {list: null, name: '', values: {}};

const showLessonList = async () => {
  const list = byId('lesson-list');
  if (lesson.list) {
    return;
  }
  replace(list, make('li', {}, 'Loading…'));
  const answer = await helper.call({kind: 'lesson'});
  if (answer.kind !== 'done') {
    replace(list, make('li', {}, answer.text || 'The lessons could not be read.'));
    return;
  }
  lesson.list = answer.list;
  replace(list, answer.list.map(entry => make('li', {}, make('a', {
    href: '#lessons/' + encodeURIComponent(entry.id)}, entry.title))));
  markLesson();
};

const markLesson = () => {
  for (const link of byId('lesson-list').querySelectorAll('a')) {
    if (link.getAttribute('href') === '#lessons/' + encodeURIComponent(lesson.name)) {
      link.setAttribute('aria-current', 'page');
    } else {
      link.removeAttribute('aria-current');
    }
  }
};

const askLesson = () => helper.call({kind: 'lesson', name: lesson.name, values: lesson.values});

const followLesson = newest(askLesson, answer => {
  const faults = new Map((answer.faults || []).map(fault =>
    [String(fault.path).replace(/^\$\./, ''), fault.text || faultText(fault)]));
  for (const field of byId('lesson-inputs').querySelectorAll('.field')) {
    const text = faults.get(field.dataset.key) || '';
    field.querySelector('.fault').textContent = text;
    field.classList.toggle('faulty', Boolean(text));
  }
  if (answer.kind === 'done') {
    replace(byId('lesson-page'), tallFrame(answer.html, 'The lesson with these numbers'));
    say('The lesson follows the numbers.');
  } else if (answer.kind === 'failed') {
    say(answer.text);
  }
});

const followSoon = later(300, followLesson);

const lessonInput = input => {
  const id = 'lesson~' + input.key;
  const entry = make('input', {
    id, type: 'text', autocomplete: 'off', 'aria-describedby': id + '~fault',
    input: () => {
      lesson.values[input.key] = entry.value;
      followSoon();
    },
  });
  entry.value = input.value;
  return make('div', {class: 'field', 'data-key': input.key}, make('label', {for: id}, capital(input.label)),
    make('div', {class: 'entry'}, entry, make('span', {class: 'unit'}, input.unit || '')),
    make('p', {class: 'fault', id: id + '~fault'}));
};

const exercise = (task, index) => {
  const id = 'exercise~' + index;
  const outcome = make('div', {role: 'status'});
  const given = make('input', {id, type: 'text', autocomplete: 'off', keydown: event => {
    if (event.key === 'Enter') {
      checkIt();
    }
  }});
  const checkIt = async () => {
    const answer = await helper.call({
      kind: 'answer', lesson: lesson.name, exercise: task.exercise, seed: task.seed, given: given.value,
    });
    if (answer.kind !== 'done') {
      replace(outcome, make('p', {}, answer.text
        || (answer.faults || []).map(fault => fault.text).join(' ') || 'The answer could not be read.'));
      return;
    }
    replace(outcome, make('p', {class: answer.right ? 'right' : 'fault'},
      answer.right ? '✓ Right.' : '✗ Not yet.' + (answer.wrongStep ? ' Look again at: ' + answer.wrongStep : '')),
    answer.solution && make('details', {}, make('summary', {}, 'The worked solution'),
      tallFrame(answer.solution, 'Worked solution of exercise ' + (index + 1))));
  };
  return make('li', {}, tallFrame(task.html, 'Exercise ' + (index + 1)),
    make('label', {for: id}, 'Your answer to exercise ' + (index + 1)),
    make('div', {class: 'entry'}, given, button('Check it', checkIt)), outcome);
};

const showLesson = async name => {
  if (!name || name === lesson.name) {
    return;
  }
  lesson.name = name;
  lesson.values = {};
  markLesson();
  const place = byId('lesson');
  replace(place, make('p', {}, 'Loading…'));
  const answer = await askLesson();
  if (lesson.name !== name) {
    return;
  }
  if (answer.kind !== 'done') {
    replace(place, make('p', {class: 'fault'}, answer.text || 'There is no such lesson.'));
    return;
  }
  const entry = (lesson.list || []).find(item => item.id === name);
  replace(place, make('h2', {tabindex: '-1'}, entry ? entry.title : name),
    answer.inputs.length > 0 && make('fieldset', {id: 'lesson-inputs', class: 'cells'},
      make('legend', {}, 'Numbers to change'), answer.inputs.map(lessonInput)),
    answer.inputs.length === 0 && make('div', {id: 'lesson-inputs', hidden: true}),
    make('div', {id: 'lesson-page'}, tallFrame(answer.html, 'The lesson')),
    (answer.exercises || []).length > 0 && [make('h3', {}, 'Exercises'),
      make('ol', {class: 'exercises'}, answer.exercises.map(exercise))]);
  place.firstChild.focus();
};

const toggleProjector = event => {
  const large = document.documentElement.classList.toggle('projector');
  event.currentTarget.setAttribute('aria-pressed', String(large));
  for (const frame of byId('lesson').querySelectorAll('iframe')) {
    frame.contentDocument.documentElement.style.fontSize = large ? '150%' : '';
  }
};
