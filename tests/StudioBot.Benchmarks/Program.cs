using System.Globalization;
using BenchmarkDotNet.Running;
using StudioBot.Benchmarks;

switch (args)
{
    case ["echo", var url]:
        await EchoBot.Run(url, null);
        break;
    case ["echo", var url, var file]:
        await EchoBot.Run(url, file);
        break;
    case ["studio", var folder, var url, var pace]:
        await StudioService.Run(folder, url, pace == "paced");
        break;
    case ["load", ("ask" or "used") and var what, var count]:
        await Goals.RunOne(Console.Out, what == "ask", int.Parse(count, CultureInfo.InvariantCulture));
        break;
    case ["figures"]:
        await Held.Print(Console.Out);
        break;
    case ["hold"]:
        return await Held.Hold(Console.Out) ? 0 : 1;
    case ["functions", .. var filters]:
        BenchmarkSwitcher.FromAssembly(typeof(Goals).Assembly).Run(filters);
        break;
    case []:
        await Goals.Run(Console.Out);
        break;
    default:
        Console.Error.WriteLine("Try  dotnet run -c Release  for the table, -- load used 2000  for one load, or  -- functions --filter '*'");
        return 2;
}

return 0;
